/** Where things stand in the drawing, in its own units. */
export const SIZE = { width: 420, height: 312 };
export const TANK = { x: 66, y: 48, width: 236, height: 132 };
export const SUMP = { x: 96, y: 222, width: 150, height: 74 };
export const STORE = { x: 330, y: 212, width: 66, height: 84 };
/** The water of the display runs over at this height, and stands there. */
export const SURFACE_Y = 66;
export const LABEL_Y = 309;

const RIM_Y = SUMP.y + 4;
const LOWEST_Y = SUMP.y + SUMP.height - 6;

/** The water line of the sump: −1 is as far below where it began as 1, the rim, is above it. */
export const sumpY = (levelShare: number): number => {
  const share = Math.max(-1, Math.min(1, levelShare));
  return LOWEST_Y + ((share + 1) / 2) * (RIM_Y - LOWEST_Y);
};

/** A vessel open at the top. */
export const glass = ({ x, y, width, height }: typeof TANK): string =>
  `M${x} ${y}v${height}h${width}v${-height}`;
