import { beingRead } from './beingRead';
import { pressOver } from './pressOver';

export type Read<T> =
  { readonly ok: true; readonly value: T } | { readonly ok: false; readonly message: string };

interface Field<T> {
  /** What stands in the field while nobody types. */
  written(): string;
  /** What typed text means, or why it means nothing and what stays in force. */
  read(typed: string): Promise<Read<T>>;
  put(value: T): void;
}

/**
 * What is typed into a field: kept until it is taken, and beside its complaint where it is refused.
 * `TypedInput` is its element.
 */
export class Draft<T> {
  complaint = $state('');
  private typed: string | undefined = $state();

  constructor(private readonly field: Field<T>) {}

  get text(): string {
    return this.typed ?? this.field.written();
  }

  type(text: string): void {
    this.typed = text;
  }

  /** Reads what was typed, and puts it where it goes or says why not. */
  take(): void {
    beingRead(this.taken());
  }

  /** What is half-typed or refused goes; the field shows what is in force. */
  drop(): void {
    this.typed = undefined;
    this.complaint = '';
  }

  private async taken(): Promise<void> {
    const { typed } = this;
    if (typed === undefined) return;
    const read = await this.field.read(typed);
    await pressOver();
    // Typed on, or taken back, while it was being read.
    if (this.typed !== typed) return;
    this.complaint = read.ok ? '' : read.message;
    if (!read.ok) return;
    this.field.put(read.value);
    this.typed = undefined;
  }
}
