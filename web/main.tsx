import { loadWords } from './text/german.ts'
import './styles/base.css'
import './styles/controls.css'
import './styles/bench.css'
import './styles/findings.css'
import './styles/combobox.css'
import './styles/swaps.css'
import './styles/records.css'
import './styles/batch.css'
import './styles/print.css'
import './styles/print-bench.css'
import './styles/print-sheets.css'

// Modules take their words as they load, so the words come first. A page without its German is still a page.
void loadWords()
  .catch(() => undefined)
  .then(() => import('./start.tsx'))
