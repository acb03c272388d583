import { ERROR_CODES } from '#contract/error.ts'
import { schemaText } from './schema-text.ts'
import type { JsonSchema } from './schema-text.ts'

interface Content {
  content?: Record<string, { schema?: JsonSchema }>
}

interface Operation {
  summary?: string
  parameters?: { name: string; in: string; required?: boolean; description?: string; schema?: JsonSchema }[]
  requestBody?: Content
  responses?: Record<string, Content>
}

/** The part of an OpenAPI document that the page shows. */
export interface OpenApi {
  info: { title: string; version: string; description?: string }
  paths?: Record<string, Record<string, Operation>>
}

const ENTITIES: Record<string, string> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;' }
const escape = (text: string): string => text.replace(/[&<>"']/g, (sign) => ENTITIES[sign] ?? sign)

const schemaIn = (content: Content | undefined): JsonSchema | undefined =>
  content?.content?.['application/json']?.schema

const shape = (title: string, schema: JsonSchema | undefined): string =>
  schema ? `<h3>${escape(title)}</h3>\n<pre tabindex="0">${escape(schemaText(schema))}</pre>\n` : ''

function parameters({ parameters: list = [] }: Operation): string {
  if (list.length === 0) return ''
  const rows = list.map(
    ({ name, in: where, required, description = '', schema = {} }) =>
      `<tr><th scope="row">${escape(name)}</th><td>${escape(where)}${required ? ', required' : ''}</td>` +
      `<td>${escape(schemaText(schema))}</td><td>${escape(description || (schema.description ?? ''))}</td></tr>`,
  )
  return (
    '<h3>Parameters</h3>\n<table><thead><tr><th scope="col">Name</th><th scope="col">Where</th>' +
    `<th scope="col">Value</th><th scope="col">Meaning</th></tr></thead><tbody>${rows.join('\n')}</tbody></table>\n`
  )
}

const routeId = (method: string, url: string): string => `${method}${url}`.replace(/[^a-z]+/gi, '-').toLowerCase()

const operation = (url: string, method: string, one: Operation): string =>
  `<section aria-labelledby="${routeId(method, url)}">\n` +
  `<h2 id="${routeId(method, url)}"><code>${method.toUpperCase()} ${escape(url)}</code></h2>\n` +
  `<p>${escape(one.summary ?? '')}</p>\n` +
  parameters(one) +
  shape('Body', schemaIn(one.requestBody)) +
  shape('Reply', schemaIn(one.responses?.['200'])) +
  '</section>\n'

const errors = (): string =>
  '<section aria-labelledby="errors">\n<h2 id="errors">Errors</h2>\n' +
  '<p>Every error has one shape: <code>{ "error": { "code", "message", "at", "nearest" } }</code>. ' +
  '<code>at</code> is a JSON pointer to the field; inside a formula it starts at the formula.</p>\n<dl>' +
  Object.entries(ERROR_CODES)
    .map(([code, meaning]) => `<dt><code>${code}</code></dt><dd>${escape(meaning)}</dd>`)
    .join('\n') +
  '</dl>\n</section>\n'

/** The description of the API as a page: no script, no inline style. */
export function docsPage({ info, paths = {} }: OpenApi): string {
  const operations = Object.entries(paths).flatMap(([url, methods]) =>
    Object.entries(methods).map(([method, one]) => ({ url, method, one })),
  )
  const list = operations.map(
    ({ url, method }) => `<li><a href="#${routeId(method, url)}">${method.toUpperCase()} ${escape(url)}</a></li>`,
  )
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escape(info.title)}: API</title>
<link rel="stylesheet" href="/api/docs.css">
</head>
<body>
<main>
<h1>${escape(info.title)}: API</h1>
<p>${escape(info.description ?? '')} Version ${escape(info.version)}. The same for programs:
<a href="/api/openapi.json">openapi.json</a>. A question mark after a name: may be left out. Other keys than these are refused.</p>
<nav aria-label="Routes"><ul>
${list.join('\n')}
<li><a href="#errors">Errors</a></li>
</ul></nav>
${operations.map(({ url, method, one }) => operation(url, method, one)).join('')}${errors()}</main>
</body>
</html>
`
}

export const DOCS_STYLE = `:root { color-scheme: light dark; font: 1rem/1.5 system-ui, sans-serif; }
body { margin: 0; }
main { max-width: 60rem; margin: 0 auto; padding: 1rem; }
h2 { border-top: 1px solid; padding-top: 1rem; overflow-wrap: anywhere; }
pre { overflow-x: auto; padding: 0.75rem; border: 1px solid; border-radius: 0.25rem; }
table { border-collapse: collapse; }
th, td { text-align: left; vertical-align: top; padding: 0.25rem 0.75rem 0.25rem 0; overflow-wrap: anywhere; }
dt { margin-top: 0.5rem; }
`
