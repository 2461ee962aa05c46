/** A set of the invented Harrow Lane workshop, with everything a set file can say. Its figures are made up. */
export const SET_TEXT = `set; Harrow Lane irons
target; swingweight; D2; 0.5; 7
shafts; 108; 3; 7
grip; 50; 10.63; 5.3
ferrule; 2
epoxy; 2
tip; parallel
tip trims; 0.5; 0.5; 6
balance share; 0.49
most tip trim; 1.5
bend limit; 2
tolerance; length; 0.125
bin; 107.2; 108.9; 110.4; 102; 105.5; 112; 116; 118
club; length; loft; lie; head; head loft; head lie; bounce; raw length; bore
5; 38; 26; 61; 245; 27; 61; 5; 41; 0.5
6; 37.5; 29.5; 61.5; 252; 30; 61; 5.5; 41; 0.5
7; 37; 33; 62; 258; 36; 62; 6; 41; 0.5
8; 36.5; 37; 62.5; 275; 37; 62; 7; 41; 0.5
9; 36; 41.5; 63; 275; 41; 62; 7; 41; 0.5
PW; 35.5; 46; 63.5; 285; 46; 62; 8; 41; 0.5
`;
