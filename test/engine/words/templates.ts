import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import ts from 'typescript'

export interface Template {
  /** as catalogues know it: "at {1} %" */
  text: string
  file: string
  line: number
}

const textOf = (template: ts.TemplateLiteral): string =>
  ts.isNoSubstitutionTemplateLiteral(template)
    ? template.text
    : template.templateSpans.reduce(
        (text, { literal }, index) => `${text}{${index + 1}}${literal.text}`,
        template.head.text,
      )

const isSay = (tag: ts.Expression): boolean =>
  (ts.isIdentifier(tag) && tag.text === 'say') || (ts.isPropertyAccessExpression(tag) && tag.name.text === 'say')

/** All sentences of a folder of sources that are marked for translation by the tag `say`. */
export function templatesIn(folder: string): Template[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts'))
    .sort()
    .map((name) => join(folder, name))
    .flatMap((file) => {
      const source = ts.createSourceFile(file, readFileSync(file, 'utf8'), ts.ScriptTarget.Latest, true)
      const found: Template[] = []
      const visit = (node: ts.Node): void => {
        if (ts.isTaggedTemplateExpression(node) && isSay(node.tag)) {
          const line = source.getLineAndCharacterOfPosition(node.getStart()).line + 1
          found.push({ text: textOf(node.template), file, line })
        }
        ts.forEachChild(node, visit)
      }
      visit(source)
      return found
    })
}
