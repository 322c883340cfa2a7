import type { LineResult } from '../../../shared/verdict/lineResult';
import { say } from '../../../shared/words/turn';
import type { NearestTurn, TurnTold } from '../../ask/outcome';
import { dkhText, plain, passed } from './texts';
import { alsoSentences } from './turned';

export function refusedSentences(
  { refusal, nearest }: Extract<TurnTold['turn'], { kind: 'refused' }>,
  targetDkh: number,
): string[] {
  const told = say.refused;
  const wayOut = nearest ? nearestSentence(nearest) : told.threePlans;
  switch (refusal.kind) {
    case 'outOfReach':
      return [told.outOfReach(dkhText(targetDkh), dkhText(refusal.restsDkh ?? NaN)), wayOut];
    case 'offTarget':
      return [
        told.offTarget(dkhText(refusal.endsDkh), dkhText(targetDkh)),
        ...alsoSentences(refusal.also),
        wayOut,
      ];
    case 'dump':
      return [told.dump(plain(refusal.fullestL)), wayOut];
    case 'breach':
      return [breachSentence(refusal.breach, refusal.firstH), wayOut];
  }
}

const breachSentence = (line: LineResult, firstH: number): string =>
  say.refused.breach(...passed(line, firstH));

function nearestSentence(nearest: NearestTurn): string {
  const told = say.refused;
  switch (nearest.kind) {
    case 'knownUse':
      return told.knownUse(plain(nearest.giveOrTakeDkhPerDay));
    case 'target':
      return told.target(plain(nearest.dkh));
    case 'calcium':
      return told.calcium;
    case 'limit':
      return told.limit(plain(nearest.dkhPerDay));
  }
}
