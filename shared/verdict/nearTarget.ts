/** So near its target a plan holds it: as near as a test can tell, dKH. */
export const NEAR_TARGET_DKH = 0.3;
