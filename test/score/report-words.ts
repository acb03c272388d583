import { fileURLToPath } from 'node:url'
import { buildKnowledge } from '#engine/index.ts'
import { translateKnowledge } from '#engine/knowledge/translate-knowledge.ts'
import { loadRaw } from '#load/load-raw.ts'
import { templatesIn } from '../engine/words/templates.ts'

/**
 * What the German catalogue lacks: `node --import tsx test/score/report-words.ts [part of a file name | data | unused]`.
 * Templates of the engine by file and line; sentences of the data; German that nothing asks for.
 */
const root = (path: string): string => fileURLToPath(new URL(`../../${path}`, import.meta.url))

const knowledge = buildKnowledge(loadRaw(root('graph-data')))
const german = knowledge.languages.get('de') ?? new Map<string, string>()
const templates = templatesIn(root('server/engine'))

/** Sentences of the data, as they are asked for when the knowledge is translated. */
function askedOfData(): Set<string> {
  const asked = new Set<string>()
  const recorder = new Map<string, string>()
  recorder.get = (english) => {
    asked.add(english)
    return undefined
  }
  translateKnowledge(knowledge, recorder)
  return asked
}

const [only = ''] = process.argv.slice(2)
const data = askedOfData()
const used = new Set([...data, ...templates.map(({ text }) => text)])
const missing = templates.filter(({ text, file }) => !german.has(text) && file.includes(only === 'data' ? '' : only))
const missingData = [...data].filter((text) => text !== '' && !german.has(text))
const unused = [...german.keys()].filter((text) => !used.has(text))

if (only === 'unused') for (const text of unused) console.log(text)
else if (only === 'data') for (const text of missingData) console.log(text)
else for (const { text, file, line } of missing) console.log(`${file.replace(root(''), '')}:${line}  ${text}`)
console.log(
  `${templates.length} templates, ${missing.length} without German; ${data.size} sentences of the data, ${missingData.length} without; ${unused.length} German ones that nothing asks for`,
)
