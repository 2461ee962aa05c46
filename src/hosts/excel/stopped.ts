/** The user stopped the work. */
export class Stopped extends Error {}
