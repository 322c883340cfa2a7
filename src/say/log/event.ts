import type { Reading } from '../../../shared/log/reading';
import { say } from '../../../shared/words/logPage';

/** "skimmer: cleaned"; empty where nothing was done to anything. */
export const eventText = ({ event, equipment = '' }: Reading): string =>
  event ? say.marks.event(equipment, say.events[event]) : '';
