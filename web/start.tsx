import { QueryClientProvider } from '@tanstack/react-query'
import { StrictMode } from 'react'
import { createRoot } from 'react-dom/client'
import { App } from './app.tsx'
import { makeQueryClient } from './client/query-client.ts'
import { keepForLater } from './offline/keep.ts'
import { listenForNetwork } from './offline/server-watch.ts'
import { german } from './text/german.ts'
import { text } from './text/text.ts'

document.documentElement.lang = german === null ? 'en' : 'de'
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
