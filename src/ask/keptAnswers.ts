import { openDB, type IDBPDatabase } from 'idb';
import { using } from '../store/database';
import type { Answer } from './answer';
import type { Asked, Asking, Given } from './asking';

const DATABASE = 'paper-reef answers';
const STORE = 'answers';
/** A built file bears the fingerprint of all that it stands on: another build may answer otherwise. */
const BUILD = import.meta.url;

type LogAnswered = Given<'answer'>;

interface Kept {
  readonly build: string;
  readonly asked: string;
  readonly value: LogAnswered;
}

const inStore = <T>(act: (db: IDBPDatabase) => Promise<T>): Promise<T> =>
  using(
    openDB(DATABASE, 1, { upgrade: (upgraded) => void upgraded.createObjectStore(STORE) }),
    act,
  );

async function find(tankId: string, asked: string): Promise<LogAnswered | undefined> {
  const kept = (await inStore((db) => db.get(STORE, tankId))) as Kept | undefined;
  return kept?.build === BUILD && kept.asked === asked ? kept.value : undefined;
}

/**
 * What the log of a tank says: as this build has said it before to the very same question, also over
 * a reload, else worked out and kept. A browser that keeps nothing has it worked out each time.
 */
export class KeptAnswers {
  /** How often something was asked under each key: an older question that comes late is passed over. */
  private readonly times: Record<string, number> = {};

  constructor(private readonly client: Asking) {}

  async ask(
    tankId: string,
    question: Asked<'answer'>,
    key: string = tankId,
  ): Promise<Answer<LogAnswered>> {
    const { client, times } = this;
    // While it is developed its files bear no fingerprint.
    if (import.meta.env.DEV) return client.ask('answer', question, { key });
    const time = (times[key] ?? 0) + 1;
    times[key] = time;
    const asked = JSON.stringify(question);
    const value = await find(tankId, asked).catch(() => undefined);
    if (times[key] !== time) return { kind: 'superseded' };
    if (value !== undefined) {
      client.cancel(key);
      return { kind: 'done', value, tookMs: 0 };
    }
    const answer = await client.ask('answer', question, { key });
    if (answer.kind === 'done') {
      const kept: Kept = { build: BUILD, asked, value: answer.value };
      void inStore((db) => db.put(STORE, kept, tankId)).catch(() => undefined);
    }
    return answer;
  }
}
