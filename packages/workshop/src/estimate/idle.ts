/** Below this an engine idles, 1/s. */
export const idleBelow = 1150 / 60;
