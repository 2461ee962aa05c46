// The package hands out its source as its types, which do not pass our settings; this and odex.d.ts stand between.
export { Solver } from "odex";
