import { openDB, type IDBPDatabase } from 'idb';
import { using } from '../store/database';
import type { Answer } from './answer';
import type { Asked, Asking, Given } from './asking';

const DATABASE = 'paper-reef answers';
const STORE = 'answers';
/** A built file bears the fingerprint of all that it stands on: another build may answer otherwise. */
const BUILD = import.meta.url;

/** What is kept of a tank: what its log says, and what it uses up. */
type KeptName = 'answer' | 'usedUp';

interface Kept {
  readonly build: string;
  readonly asked: string;
  readonly value: Given<KeptName>;
}

/** What the log says came first, and stands under the tank's own id. */
const placeOf = (name: KeptName, tankId: string) =>
  name === 'answer' ? tankId : `${tankId} ${name}`;

const inStore = <T>(act: (db: IDBPDatabase) => Promise<T>): Promise<T> =>
  using(
    openDB(DATABASE, 1, { upgrade: (upgraded) => void upgraded.createObjectStore(STORE) }),
    act,
  );

async function find(place: string, asked: string): Promise<Given<KeptName> | undefined> {
  const kept = (await inStore((db) => db.get(STORE, place))) as Kept | undefined;
  return kept?.build === BUILD && kept.asked === asked ? kept.value : undefined;
}

/**
 * What the log of a tank says: as this build has said it before to the very same question, also over
 * a reload, else worked out and kept. A browser that keeps nothing has it worked out each time.
 */
export class KeptAnswers<Name extends KeptName> {
  /** How often something was asked under each key: an older question that comes late is passed over. */
  private readonly times: Record<string, number> = {};

  constructor(
    private readonly client: Asking,
    private readonly name: Name,
  ) {}

  async ask(
    tankId: string,
    question: Asked<Name>,
    key = placeOf(this.name, tankId),
  ): Promise<Answer<Given<Name>>> {
    const { client, times, name } = this;
    const place = placeOf(name, tankId);
    // While it is developed its files bear no fingerprint.
    if (import.meta.env.DEV) return client.ask(name, question, { key });
    const time = (times[key] ?? 0) + 1;
    times[key] = time;
    const asked = JSON.stringify(question);
    const value = await find(place, asked).catch(() => undefined);
    if (times[key] !== time) return { kind: 'superseded' };
    if (value !== undefined) {
      client.cancel(key);
      return { kind: 'done', value: value as Given<Name>, tookMs: 0 };
    }
    const answer = await client.ask(name, question, { key });
    if (answer.kind === 'done') {
      const kept: Kept = { build: BUILD, asked, value: answer.value };
      void inStore((db) => db.put(STORE, kept, place)).catch(() => undefined);
    }
    return answer;
  }
}
