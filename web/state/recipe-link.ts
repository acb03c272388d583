import { isBench } from './storage.ts'
import { withoutRecipe } from './bench.ts'
import type { Bench } from './bench.ts'

/** What a recipe in an address begins with; the digit counts the ways of writing it. */
const MARK = '#r1.'
/** Longer than this, mail and chat programs cut an address off. */
const LONGEST = 8000

async function through(
  bytes: Uint8Array<ArrayBuffer>,
  change: GenericTransformStream,
): Promise<Uint8Array<ArrayBuffer>> {
  const stream = new Blob([bytes]).stream().pipeThrough(change as TransformStream<Uint8Array, Uint8Array>)
  return new Uint8Array(await new Response(stream).arrayBuffer())
}

const toText = (bytes: Uint8Array): string =>
  btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join(''))
    .replaceAll('+', '-')
    .replaceAll('/', '_')
    .replace(/=+$/, '')

const toBytes = (text: string): Uint8Array<ArrayBuffer> =>
  Uint8Array.from(atob(text.replaceAll('-', '+').replaceAll('_', '/')), (sign) => sign.codePointAt(0) ?? 0)

/** The fragment that carries a recipe, settings and wishes; nothing of it is sent to a server. Null when it grows too long. */
export async function toFragment(bench: Bench): Promise<string | null> {
  if (bench.lines.length === 0) return ''
  const bytes = new Uint8Array(new TextEncoder().encode(JSON.stringify(withoutRecipe(bench))))
  const fragment = MARK + toText(await through(bytes, new CompressionStream('deflate-raw')))
  return fragment.length > LONGEST ? null : fragment
}

/** The recipe that an address carries; null when it carries none or one that cannot be read. */
export async function fromFragment(fragment: string): Promise<Bench | null> {
  if (!fragment.startsWith(MARK)) return null
  try {
    const bytes = await through(toBytes(fragment.slice(MARK.length)), new DecompressionStream('deflate-raw'))
    const bench: unknown = JSON.parse(new TextDecoder().decode(bytes))
    return isBench(bench) ? withoutRecipe(bench) : null
  } catch {
    return null
  }
}
