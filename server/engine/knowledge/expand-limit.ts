import type { Limit, LimitRow } from '#engine/model/records.ts'
import { isObject } from './expand-claims.ts'
import type { RawFile } from './raw.ts'

const strings = (value: unknown): string[] => (Array.isArray(value) ? value.map(String) : [])

export function expandLimit(file: RawFile): Limit {
  const data = isObject(file.data) ? file.data : {}
  const rows = Array.isArray(data['rows']) ? data['rows'].filter(isObject) : []
  return {
    id: String(data['id']),
    market: data['market'] === 'us' ? 'us' : 'eu',
    act: String(data['act'] ?? ''),
    entry: String(data['entry'] ?? ''),
    title: String(data['title'] ?? ''),
    kind: data['kind'] === 'opinion' ? 'opinion' : 'law',
    ...(typeof data['basis'] === 'string' && { basis: data['basis'] }),
    members: isObject(data['members']) ? (data['members'] as Record<string, number>) : {},
    memberClasses: strings(data['member_classes']),
    requires: strings(data['requires']),
    use: String(data['use'] ?? 'any'),
    rows: rows.map((row) => ({ ...(row as unknown as LimitRow), scope: isObject(row['scope']) ? row['scope'] : {} })),
    date: String(data['date'] ?? ''),
    ...(typeof data['exported'] === 'string' && { exported: data['exported'] }),
  }
}
