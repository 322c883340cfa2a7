/** The hour of a trial that charts, tables and drawing show together. */
export class TimeAt {
  timeH = $state(0);
}
