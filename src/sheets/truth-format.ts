/** Has TRUE and FALSE shown in words, for some spreadsheets show the 1 and 0 that a file keeps them as. */
export const TRUTH_FORMAT = '"TRUE";"TRUE";"FALSE"';
