/**
 * The script that the spreadsheet loads for the functions. Each file registers its function by its own id: the
 * build appends the call to CustomFunctions.associate from the doc comment above it.
 */
import "./balance/assemble.ts";
import "./balance/head-weight.ts";
import "./balance/inertia.ts";
import "./balance/swingweight.ts";
import "./balance/swingweight-code.ts";
import "./balance/swingweight-diff.ts";
import "./balance/swingweight-moment.ts";
import "./balance/weight-to-add.ts";
import "./flight/air-at.ts";
import "./flight/air-density.ts";
import "./flight/flight.ts";
import "./flight/normalize.ts";
import "./flight/spin-axis.ts";
import "./flight/spin-loft.ts";
import "./set/cut-weight.ts";
import "./set/progression.ts";
import "./set/sort-shafts.ts";
import "./shots/compare.ts";
import "./shots/group.ts";
import "./shots/next-build.ts";
import "./shots/screen.ts";
import "./shots/shots-needed.ts";
import "./shots/summary.ts";
import "./shots/weight-effect.ts";
