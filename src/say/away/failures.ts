import type { Scenario } from '../../../shared/scenario/schema';
import { beyondText, firstText, reachText } from '../drill/boughtText';
import { spanText } from '../clockText';
import { say } from '../../../shared/words/away';
import type { NobodyLooks } from '../../ask/outcome';
import { failureName } from '../drill/failureNames';
import { type Unnoticed, hourText } from './texts';

/** When somebody comes, against what has come by then. */
function noticedText({ first, noticedH }: Unnoticed): string {
  const soonestH = first?.reach.soonestH;
  const span = spanText(noticedH);
  return soonestH !== undefined && soonestH > noticedH
    ? say.comesBefore(span)
    : say.comesAfter(span);
}

/** One failure that nobody looks after: what comes first, then harm, then when somebody comes. */
export function failureText(failure: Unnoticed): string {
  const { harm, first } = failure;
  const isSame = [first, first?.graver].some((one) => one && one.line.id === harm?.line.id);
  return [
    firstText(failure),
    ...(harm && !isSame ? [say.harm(beyondText(harm.line), reachText(harm.reach))] : []),
    noticedText(failure),
  ].join(' ');
}

/** Failures that pass no limit while nobody looks, in one sentence; empty where each does. */
export function harmlessText({ failures }: NobodyLooks, plan: Scenario): string {
  const names = failures.filter(({ first }) => !first).map(({ fault }) => failureName(fault, plan));
  return names.length === 0 ? '' : say.harmless(names.join(', '));
}

/** What fails, and at which hour. */
export const failureTitle = ({ fault, clockHour }: Unnoticed, plan: Scenario): string =>
  say.failure(failureName(fault, plan), hourText(clockHour));

/** The worst of them in a sentence; empty where nothing can fail. */
export function worstSentence({ failures }: NobodyLooks, plan: Scenario): string {
  const [worst] = failures;
  if (!worst) return '';
  return say.worst(failureName(worst.fault, plan), hourText(worst.clockHour), failureText(worst));
}
