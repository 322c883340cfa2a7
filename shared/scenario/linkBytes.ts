import { crc32 } from './crc32';

/** Most bytes that a link may unfold to; what is longer is cut off while it streams. */
export const MOST_UNFOLDED = 1_000_000;

const CHECK_BYTES = 4;

/** RFC 4648, section 5, without padding. */
function toBase64Url(bytes: Uint8Array): string {
  let binary = '';
  for (const byte of bytes) binary += String.fromCharCode(byte);
  return btoa(binary).replaceAll('+', '-').replaceAll('/', '_').replaceAll('=', '');
}

function fromBase64Url(text: string): Uint8Array<ArrayBuffer> | undefined {
  if (!/^[A-Za-z0-9_-]*$/.test(text) || text.length % 4 === 1) return undefined;
  const binary = atob(text.replaceAll('-', '+').replaceAll('_', '/'));
  return Uint8Array.from(binary, (letter) => letter.charCodeAt(0));
}

/** A check sum goes before the bytes, so that a letter lost on the way is noticed. */
export function seal(bytes: Uint8Array): string {
  const sealed = new Uint8Array(CHECK_BYTES + bytes.length);
  new DataView(sealed.buffer).setUint32(0, crc32(bytes));
  sealed.set(bytes, CHECK_BYTES);
  return toBase64Url(sealed);
}

/** The bytes behind a seal; undefined when they are not what was sealed. */
export function unseal(text: string): Uint8Array<ArrayBuffer> | undefined {
  const sealed = fromBase64Url(text);
  if (!sealed || sealed.length <= CHECK_BYTES) return undefined;
  const bytes = sealed.slice(CHECK_BYTES);
  return new DataView(sealed.buffer).getUint32(0) === crc32(bytes) ? bytes : undefined;
}

export async function fold(text: string): Promise<Uint8Array> {
  const stream = new Blob([text]).stream().pipeThrough(new CompressionStream('deflate-raw'));
  return new Uint8Array(await new Response(stream).arrayBuffer());
}

export type Unfolded =
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'broken' }
  | { readonly kind: 'tooLong' };

/** Unfolds bytes, giving up as soon as they have grown beyond what any plan needs. */
export async function unfold(bytes: Uint8Array<ArrayBuffer>): Promise<Unfolded> {
  const reader = new Blob([bytes])
    .stream()
    .pipeThrough(new DecompressionStream('deflate-raw'))
    .getReader();
  const decoder = new TextDecoder('utf-8', { fatal: true });
  let text = '';
  let length = 0;
  try {
    for (;;) {
      const { done, value } = await reader.read();
      if (done) return { kind: 'text', text: text + decoder.decode() };
      length += value.length;
      if (length > MOST_UNFOLDED) {
        await reader.cancel();
        return { kind: 'tooLong' };
      }
      text += decoder.decode(value, { stream: true });
    }
  } catch {
    return { kind: 'broken' };
  }
}
