import { promisify } from 'node:util'
import { brotliCompress, constants, gunzip, gzip } from 'node:zlib'
import type { RawData } from '#engine/index.ts'

const QUALITY = 9 // half a second; 11 takes a quarter of a minute for a tenth less
const squeeze = promisify(brotliCompress)
const zip = promisify(gzip)
const unzip = promisify(gunzip)

/** All data as one file of JSON, packed as whoever asks can read it. */
export interface PackedData {
  version: string
  as: (packing: 'br' | 'gzip' | 'plain') => Promise<Uint8Array>
}

async function pack(raw: RawData) {
  const json = Buffer.from(JSON.stringify(raw))
  const params = { [constants.BROTLI_PARAM_QUALITY]: QUALITY, [constants.BROTLI_PARAM_SIZE_HINT]: json.length }
  return { br: await squeeze(json, { params }), gzip: await zip(json) }
}

/** Packs when first asked, beside the main thread, and keeps both packings. */
export function packRaw(raw: RawData): PackedData {
  let packed: ReturnType<typeof pack> | undefined
  return {
    version: raw.version,
    as: async (packing) => {
      packed ??= pack(raw)
      const { br, gzip: zipped } = await packed
      if (packing === 'plain') return unzip(zipped)
      return packing === 'br' ? br : zipped
    },
  }
}
