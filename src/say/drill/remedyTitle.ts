import { figure } from '../../../shared/words/figure';
import { say } from '../../../shared/words/drills';
import type { ResponseResult } from '../../ask/outcome';

const { responses: told } = say;

/** What is done once a failure is noticed: "CO₂ water, 4 × 0.25 L". */
export function remedyTitle(remedy: ResponseResult['remedy']): string {
  switch (remedy.id) {
    case 'carbonated': {
      const { portions, litresEach } = remedy;
      if (portions === 0) return told.carbonatedNotNeeded;
      return told.carbonated(String(portions), figure(litresEach, 2));
    }
    case 'co2Air':
      return remedy.hours === 0 ? told.co2AirNotNeeded : told.co2Air(figure(remedy.hours, 1));
    case 'change':
      return told.change(figure(remedy.percent));
    default:
      return told[remedy.id];
  }
}
