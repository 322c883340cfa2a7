import type { Reading } from '../../../shared/log/reading';
import { MOST_AWAY_DAYS, type TankLog } from '../../../shared/log/tankLog';
import { say } from '../../../shared/words/away';
import type { AwayTold, NobodyLooks } from '../../ask/outcome';
import type { Asking } from '../../ask/asking';
import { awayAsked } from './awayAsked';
import type { BenchPlans } from '../../store/plans';
import { knownOf } from '../planAsked';
import { ranUntil } from '../ranUntil';

/** Days away and between visits, as an address has them: "9/3". */
export function daysIn(detail: string): { days: number; visitDays: number } | undefined {
  const [days = NaN, visitDays = 0] = detail.split('/').map(Number);
  const isWhole = Number.isInteger(days) && Number.isInteger(visitDays);
  const isKnown =
    days >= 1 && days <= MOST_AWAY_DAYS && visitDays >= 0 && visitDays <= MOST_AWAY_DAYS;
  return isWhole && isKnown ? { days, visitDays } : undefined;
}

/** Everything that the sitter's sheet of one tank needs, asked in turn. */
export class Sitter {
  told: { readonly asked: AwayTold; readonly looks: NobodyLooks } | undefined = $state.raw();
  trouble = $state('');

  constructor(private readonly client: Asking) {}

  async ask(
    bench: BenchPlans,
    readings: readonly Reading[],
    log: TankLog,
    detail: string,
  ): Promise<void> {
    const absence = daysIn(detail);
    if (!absence) {
      this.trouble = say.sheet.noDays(detail, String(MOST_AWAY_DAYS));
      return;
    }
    this.trouble = '';
    const plan = bench.plans[0]!.scenario;
    const { targetDkh, scoopG, pumpMlPerMin, withinDkhPerDay } = log;
    const wanted = { targetDkh, kit: { scoopG, pumpMlPerMin } };
    const ran = ranUntil(bench);
    const read = await this.client.ask('answer', { plan, log: readings, withinDkhPerDay, ran });
    if (read.kind !== 'done') return this.fails(read);
    const known = 'why' in read.value ? undefined : read.value;
    const asked = await this.client.ask('away', {
      ...{ plan, log: readings, wanted },
      known: known && knownOf(known),
      absence: { ...awayAsked(absence.days, absence.visitDays, known), asAsked: true },
    });
    if (asked.kind !== 'done') return this.fails(asked);
    const looks = await this.client.ask('nobodyLooks', asked.value);
    if (looks.kind !== 'done') return this.fails(looks);
    this.told = { asked: asked.value, looks: looks.value };
  }

  private fails(answer: { kind: string; failure?: { message: string } }): void {
    if (answer.failure) this.trouble = say.panel.trouble(answer.failure.message);
  }
}
