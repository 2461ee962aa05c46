import type { SessionFacts } from "./session.ts";

/**
 * The demo session. Everything in it is invented: the workshop, the player, the builds and every figure. Four builds
 * of one 7-iron head, six shots each, hit in a balanced order, as a launch monitor's table would be pasted.
 */
// biome-ignore format: a table reads best with a line a row
export const DEMO_TEXT = [
  "Build\tShot\tTime\tClub Speed (mph)\tAttack Angle (deg)\tClub Path (deg)\tFace Angle (deg)\tFace to Path (deg)\tDynamic Loft (deg)\tBall Speed (mph)\tSmash Factor\tLaunch Angle (deg)\tLaunch Direction (deg)\tSpin Rate (rpm)\tSpin Axis (deg)\tPeak Height (ft)\tLanding Angle (deg)\tCarry (yd)\tTotal (yd)\tOffline (yd)",
  "95 g high-launch\t1\t14:05\t84.7\t-3.5\t4.5\t2.0\t-2.5\t24.8\t113.7\t1.34\t19.2\t2.7\t6060\t-4.6\t89\t45.1\t161.6\t167.6\t1.4 R",
  "105 g mid-launch\t2\t14:06\t83.2\t-3.3\t2.5\t1.8\t-0.7\t23.4\t113.2\t1.36\t18.0\t2.0\t5570\t-1.4\t81\t42.3\t162.6\t168.8\t3.9 R",
  "115 g mid-launch\t3\t14:07\t82.6\t-4.4\t1.5\t1.7\t0.2\t22.7\t113.9\t1.38\t17.3\t1.7\t6220\t0.6\t81\t43.3\t160.8\t168.0\t5.4 R",
  "120 g low-launch\t4\t14:08\t81.8\t-4.8\t3.0\t1.1\t-1.9\t23.6\t110.1\t1.35\t17.9\t1.6\t5740\t-3.6\t75\t41.6\t156.0\t164.2\t0.1 R",
  "105 g mid-launch\t5\t14:08\t84.8\t-3.4\t2.0\t0.7\t-1.3\t24.2\t116.8\t1.38\t18.7\t1.1\t6520\t-2.5\t94\t46.4\t164.8\t170.0\t0.4 L",
  "120 g low-launch\t6\t14:09\t81.2\t-4.8\t-1.7\t2.1\t3.8\t22.5\t109.9\t1.35\t17.0\t1.0\t5640\t7.6\t70\t40.0\t154.8\t166.1\t11.7 R",
  "95 g high-launch\t7\t14:10\t85.5\t-3.8\t2.0\t0.8\t-1.2\t25.2\t114.9\t1.34\t19.4\t1.1\t6370\t-2.2\t93\t46.4\t162.2\t166.8\t0.1 R",
  "115 g mid-launch\t8\t14:11\t82.4\t-3.8\t1.2\t-1.4\t-2.6\t22.2\t112.5\t1.37\t17.0\t-0.7\t5790\t-5.5\t75\t41.3\t159.6\t169.5\t8.9 L",
  "120 g low-launch\t9\t14:12\t81.4\t-4.3\t3.1\t2.1\t-1.0\t20.8\t110.8\t1.36\t15.8\t2.4\t5280\t-2.2\t64\t37.4\t157.0\t170.0\t4.1 R",
  "115 g mid-launch\t10\t14:12\t82.7\t-4.1\t1.5\t-0.5\t-2.0\t24.2\t112.8\t1.36\t18.5\t0.1\t5920\t-3.7\t84\t43.7\t160.5\t166.7\t4.7 L",
  "105 g mid-launch\t11\t14:13\t84.1\t-3.9\t1.3\t1.0\t-0.3\t24.2\t115.6\t1.37\t18.5\t1.1\t6550\t-0.4\t91\t46.0\t162.6\t169.1\t2.5 R",
  "95 g high-launch\t12\t14:14\t84.5\t-4.6\t1.3\t1.9\t0.6\t26.9\t114.2\t1.35\t20.6\t1.8\t6830\t1.1\t99\t48.4\t158.4\t164.2\t6.4 R",
  "115 g mid-launch\t13\t14:15\t83.6\t-5.4\t1.9\t2.7\t0.8\t22.4\t113.6\t1.36\t16.9\t2.5\t5990\t1.4\t77\t42.0\t160.9\t170.1\t8.8 R",
  "95 g high-launch\t14\t14:15\t85.3\t-3.6\t-0.7\t-0.8\t-0.1\t24.6\t115.6\t1.36\t18.9\t-0.8\t6330\t-0.1\t93\t46.0\t163.7\t170.8\t2.3 L",
  "120 g low-launch\t15\t14:16\t82.7\t-5.2\t2.3\t-0.7\t-3.0\t22.1\t110.5\t1.34\t16.7\t0.1\t6010\t-6.0\t71\t40.7\t154.7\t161.8\t6.8 L",
  "105 g mid-launch\t16\t14:17\t84.9\t-4.3\t1.9\t-0.2\t-2.1\t23.9\t115.8\t1.36\t18.2\t0.4\t6220\t-4.1\t89\t44.9\t164.5\t170.7\t4.5 L",
  "95 g high-launch\t17\t14:18\t84.1\t-3.6\t2.0\t4.4\t2.4\t24.4\t103.5\t1.23\t18.8\t3.7\t5430\t4.7\t68\t39.9\t143.9\t156.4\t14.2 R",
  "105 g mid-launch\t18\t14:19\t83.5\t-3.5\t1.9\t-0.0\t-1.9\t24.4\t113.5\t1.36\t18.8\t0.5\t5840\t-3.8\t86\t44.1\t162.2\t168.8\t3.6 L",
  "115 g mid-launch\t19\t14:20\t82.7\t-4.6\t0.5\t-0.5\t-1.0\t24.4\t112.8\t1.36\t18.6\t-0.2\t6100\t-2.0\t85\t44.3\t159.9\t167.1\t3.3 L",
  "120 g low-launch\t20\t14:21\t80.8\t-5.4\t1.3\t0.7\t-0.6\t23.4\t109.9\t1.36\t17.6\t0.8\t6130\t-1.1\t76\t42.3\t154.0\t160.6\t0.9 R",
  "105 g mid-launch\t21\t14:22\t83.2\t-4.0\t2.2\t1.4\t-0.8\t24.8\t113.4\t1.36\t19.1\t1.6\t6400\t-1.4\t90\t45.7\t159.5\t165.4\t2.6 R",
  "120 g low-launch\t22\t14:22\t83.3\t-5.0\t1.0\t-0.7\t-1.7\t22.2\t112.9\t1.36\t16.7\t-0.2\t5930\t-3.3\t75\t41.5\t160.0\t169.5\t4.8 L",
  "95 g high-launch\t23\t14:23\t84.9\t-3.4\t3.5\t3.7\t0.2\t25.8\t115.0\t1.35\t19.9\t3.6\t6550\t0.4\t97\t47.3\t161.1\t167.5\t10.7 R",
  "115 g mid-launch\t24\t14:24\t82.1\t-4.2\t2.4\t-0.8\t-3.2\t22.7\t113.0\t1.38\t17.3\t0.1\t5910\t-6.4\t78\t42.1\t160.2\t170.5\t7.8 L",
].join("\n");

/** What is known around the demo table, all of it invented. */
export const DEMO_FACTS: SessionFacts = {
  title: "7-iron fitting (invented demo)",
  player: "Rowan Tilsley (invented)",
  date: "2026-11-25",
  place: "Harrow Lane, bay 2 (invented)",
  baseline: "120 g low-launch",
  goal: "overall",
};
