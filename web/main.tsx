import { QueryClientProvider } from '@tanstack/react-query'
import { StrictMode } from 'react'
import { createRoot } from 'react-dom/client'
import { App } from './app.tsx'
import { makeQueryClient } from './client/query-client.ts'
import { keepForLater } from './offline/keep.ts'
import { listenForNetwork } from './offline/server-watch.ts'
import { language } from './text/language.ts'
import { text } from './text/text.ts'
import './styles/base.css'
import './styles/bench.css'
import './styles/findings.css'
import './styles/combobox.css'
import './styles/swaps.css'
import './styles/records.css'
import './styles/batch.css'
import './styles/print.css'
import './styles/print-bench.css'
import './styles/print-sheets.css'

document.documentElement.lang = language
document.querySelector('meta[name=description]')?.setAttribute('content', text.app.description)
keepForLater()
listenForNetwork()

const root = document.getElementById('root')
if (root) {
  createRoot(root).render(
    <StrictMode>
      <QueryClientProvider client={makeQueryClient()}>
        <App />
      </QueryClientProvider>
    </StrictMode>,
  )
}
