import { weekdayNames } from '../scenario/weekdayNames';
import type { Scenario } from '../scenario/schema';

type Schedule = Scenario['dosers'][number]['schedule'];

const SLACK_H = 1e-9;

/** A day's dosing as equal pulses at equal distances. */
export interface Pulses {
  readonly count: number;
  readonly spacingH: number;
  readonly durationH: number;
}

/** A dose too large for the pump between two doses runs on until the next, and is then cut short. */
export function pulsesOf(schedule: Schedule, mlPerDay: number): Pulses {
  const { way, hours, everyMinutes, pumpMlPerMin } = schedule;
  const doses = Math.max(1, Math.round(schedule.doses));
  if (way === 'spread') return { count: 1, spacingH: hours, durationH: hours };
  const spacingH = way === 'doses' ? hours / doses : everyMinutes / 60;
  const count = way === 'doses' ? doses : Math.max(1, Math.floor(hours / spacingH + SLACK_H));
  const durationH = mlPerDay / count / pumpMlPerMin / 60;
  return { count, spacingH, durationH: Math.min(spacingH, durationH) };
}

/** What a pump gives in a day of dosing: what was set, or as much as its hours allow, mL. */
export function givenMlPerDay(schedule: Schedule, mlPerDay: number): number {
  const { count, durationH } = pulsesOf(schedule, mlPerDay);
  return Math.min(mlPerDay, count * durationH * 60 * schedule.pumpMlPerMin);
}

/** The clock of one doser: when it is open, and when that changes next. */
export class DoseClock {
  private readonly days: ReadonlySet<number>;

  constructor(
    private readonly pulses: Pulses,
    private readonly schedule: Schedule,
    private readonly clockHour: number,
  ) {
    const named = schedule.weekdays.map((name) => weekdayNames.indexOf(name));
    this.days = new Set(named.length > 0 ? named : [0, 1, 2, 3, 4, 5, 6]);
  }

  private get always(): boolean {
    return this.pulses.durationH >= 24 - SLACK_H && this.days.size === 7;
  }

  isOpen(timeH: number): boolean {
    const { count, spacingH, durationH } = this.pulses;
    const { startH, day } = this.dayOf(timeH);
    const since = timeH - startH + SLACK_H;
    const pulse = Math.floor(since / spacingH);
    return this.days.has(day) && pulse < count && since - pulse * spacingH < durationH;
  }

  nextEdgeH(timeH: number): number {
    if (this.always) return Infinity;
    const { count, spacingH, durationH } = this.pulses;
    const { startH } = this.dayOf(timeH);
    const pulse = Math.floor((timeH - startH + SLACK_H) / spacingH);
    if (pulse >= count) return startH + 24;
    const ends = startH + pulse * spacingH + durationH;
    if (ends > timeH + SLACK_H) return ends;
    return startH + (pulse + 1 < count ? (pulse + 1) * spacingH : 24);
  }

  /** When the dosing day around a moment began, and which day of the week that was. */
  private dayOf(timeH: number): { startH: number; day: number } {
    const offset = this.schedule.fromHour - this.clockHour;
    const days = Math.floor((timeH - offset) / 24 + SLACK_H);
    return { startH: days * 24 + offset, day: ((days % 7) + 7) % 7 };
  }
}
