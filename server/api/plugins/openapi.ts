import swagger from '@fastify/swagger'
import type { FastifyInstance } from 'fastify'

/** What each route answers, in one line; the schemas say the rest. */
export const SUMMARIES: Readonly<Record<string, string>> = {
  'GET /api/health': 'Is the server up, and how large is its graph?',
  'POST /api/resolve': 'What did the person mean by these names?',
  'GET /api/names': 'What may be meant by what has been typed so far?',
  'GET /api/ingredients': 'Find ingredients by name, role, class, pH, heat, cold process, charge, solubility',
  'GET /api/ingredients/:id': 'One ingredient, whole: every statement with its source',
  'GET /api/ingredients/:id/stand-ins': 'What can stand in for it in general, with no recipe at hand?',
  'GET /api/roles': 'Which roles are there?',
  'GET /api/roles/:id': 'What does a role do, who plays it, how is a stand-in sought?',
  'GET /api/sources': 'Which works do the statements rest on?',
  'GET /api/sources/:id': 'One source: what it is, its terms, and every statement that rests on it, page by page',
  'GET /api/graph': 'The part of the graph around one node, page by page',
  'GET /api/graph/whole': 'Every node with its place in a drawing, and what joins them: to draw all at once',
  'GET /api/graph/download': 'The graph, or all around one node, as JSON, GEXF or GraphML with its terms',
  'GET /api/graph-data/:version': 'All data as the engine reads them, from which a page answers without a server',
  'GET /api/claims.csv': 'Every statement about one ingredient, or about all, as a table with origin and terms',
  'POST /api/check': 'Does this formula hold together?',
  'POST /api/preservation': 'Is the preservative at work in this formula, and what takes it away?',
  'POST /api/label': 'What goes on the label: list, allergens, words of the law, open questions?',
  'POST /api/swaps': 'What can stand in for what is missing, re-dosed and checked again?',
  'POST /api/batch': 'What do I weigh, and in which order do I work?',
  'POST /api/ph/window': 'Which pH suits all lines, who sets each end, and where is the gap if there is none?',
  'POST /api/ph/adjust': 'How much acid or base brings this batch to a pH, by its lines and by readings at the bench?',
  'GET /api/learn/lessons': 'Which lessons are there?',
  'GET /api/learn/lessons/:id': 'One lesson: text, cautions, sources, live example',
  'POST /api/learn/items': 'Questions to practise on, made of the graph',
  'POST /api/learn/what-if': 'What does a change do to a recipe? With choices for one who guesses first',
  'POST /api/learn/answers': 'Was this choice right, and why?',
  'GET /api/calculate': 'Which textbook calculations are there, and what do they ask?',
  'POST /api/swap-sheet': 'For every line of a formula: its role, its stand-ins, whether it can be left out',
}

/** Collects the schemas of all routes that are added after it. */
export async function describeRoutes(app: FastifyInstance, version: string): Promise<void> {
  await app.register(swagger, {
    openapi: {
      openapi: '3.1.0',
      info: {
        title: 'Understudy',
        version,
        description:
          'Stand-ins for cosmetic ingredients, re-doses and checks of the whole formula, with sources. Sentences of the answers come in English, or in German where Accept-Language asks for it and content-language says so.',
      },
    },
    transform: ({ schema, url, route }) => {
      const summary = SUMMARIES[`${[route.method].flat()[0]} ${url}`] ?? schema?.summary
      return { schema: { ...schema, ...(summary !== undefined && { summary }) }, url }
    },
  })
}
