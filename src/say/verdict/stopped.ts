import type { Stopped } from '../../../shared/verdict/outcome';
import { figure } from '../../../shared/words/figure';
import { say } from '../../../shared/words/verdict';

const { stops: told } = say;

/** Where and why a trial ended before its time. */
export function stoppedSentence({ timeH, why }: Stopped): string {
  const hour = figure(timeH, 1);
  switch (why.kind) {
    case 'neverEnds':
      return told.neverEnds(hour, String(Math.round(why.steps)));
    case 'noChemistry':
      return told.noChemistry(hour, why.complaint);
    default: {
      const [salinity, litres] = [figure(why.salinityPractical, 0), figure(why.volumeL, 1)];
      return told[why.kind](hour, `${salinity} ppt`, `${litres} L`);
    }
  }
}
