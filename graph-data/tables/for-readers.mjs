// The collectors point to files beside their own; a reader has the law and the tables by name, not those files.

const ANNEX = /(?:\.\.\/)?regulation\/restricted\.csv[\s,]*\(?EU-(II|III|IV|V|VI)-(\d+)(?:-\d+)?\)?/g
const POINTERS = [
  [/limit kept in (?=Annex)/g, 'limit: '],
  [/(?:\.\.\/)?regulation\/restricted\.csv holds EU limits III\/98/g, 'EU limits: Annex III, entry 98'],
  [/(?:\.\.\/)?regulation\/restricted\.csv, Annex III (\d+)/g, 'Annex III, entry $1'],
  [/(?:figures in )?(?:\.\.\/)?regulation\/restricted\.csv EU-SCCS-1681-25/g, 'SCCS/1681/25'],
  [/see regulation\/restricted\.csv US-CIR-AHA-01/g, 'panel conclusion of the Cosmetic Ingredient Review'],
  [/(: )?(?:\.\.\/)?regulation\/declared-allergens\.csv/g, ': Annex III as amended by (EU) 2023/1545'],
  [/(?:\.\.\/)?regulation\/annex-v\.csv and restricted\.csv/g, 'Annexes III and V, the entries of the substance'],
  [/(?:\.\.\/)?inventory\/cosing-inventory\.tsv\.gz/g, 'the inventory, entry of the name'],
  [
    /(?:\.\.\/)?preservation\/partition\.csv, rows named in the locator/g,
    'Published partition of preservatives between oil and water',
  ],
  [/(?:\.\.\/)?preservation\/(binding|partition|mic)\.csv/g, 'table $1 of this project'],
  [/(?:\.\.\/)?ph\/pka\.csv/g, 'table pka of this project'],
  [/\b(surfactants|pka|buffers)\.csv/g, 'table $1'],
  [/(?:\.\.\/)?regulation\/restricted\.csv/g, 'Annexes of Regulation (EC) No 1223/2009'],
]

/** The text with every pointer to a collector's file said as the law or the table that the file holds. */
export const forReaders = (text) =>
  POINTERS.reduce((said, [pointer, words]) => said.replace(pointer, words), text.replace(ANNEX, 'Annex $1, entry $2'))

/** Lists of the collectors' own that stand for something printed. */
const OWN_LISTS = {
  'reg-vi30': { locator: 'Regulation (EC) No 1223/2009, Annex VI, entry 30', grade: 'A' },
  'reg-iii321': { locator: 'Regulation (EC) No 1223/2009, Annex III, entry 321', grade: 'A' },
  'reg-all': { locator: 'Regulation (EC) No 1223/2009, Annex III as amended by (EU) 2023/1545', grade: 'A' },
  'reg-cir-aha': { locator: 'Cosmetic Ingredient Review, alpha hydroxy acids', grade: 'A' },
  'reg-tto': { locator: 'SCCS/1681/25', grade: 'A' },
  'reg-folder': { title: 'Legal entries of this project', locator: 'Annex II, entry 1396; REACH Annex XVII, entry 70' },
  'ph-pka': { title: 'Dissociation constants, table of this project', locator: 'table pka', grade: 'B' },
  'PRES-PART': {
    title: 'Published partition of preservatives between oil and water',
    locator: 'table partition',
    grade: 'B',
  },
  REGTAB: { title: 'Legal entries of this project', locator: 'Annexes III and V, the entries of the substance' },
}

const everyCell = (row, change) =>
  Object.fromEntries(Object.entries(row).map(([key, cell]) => [key, typeof cell === 'string' ? change(cell) : cell]))

/** A row of a table, all its cells for readers. */
export const rowForReaders = (row) => everyCell(row, forReaders)

/** A row of a list of sources. */
export const sourceForReaders = (row) => rowForReaders({ ...row, ...OWN_LISTS[row.source_id] })
