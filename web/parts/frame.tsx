import type { ReactNode } from 'react'
import { Link, useRoute } from 'wouter'
import { KeptLine, OfflineNotice } from '#web/offline/notice.tsx'
import { text } from '#web/text/text.ts'
import { Announcer } from './announcer.tsx'
import { LanguageSwitch } from './language-switch.tsx'

function Tab({ href, path, children }: { href: string; path: string; children: ReactNode }) {
  const [isHere] = useRoute(path)
  return (
    <Link href={href} className="tab" {...(isHere && { 'aria-current': 'page' as const })}>
      {children}
    </Link>
  )
}

/** Head, content and the standing line at the foot. */
export function Frame({ children }: { children: ReactNode }) {
  return (
    <>
      <Announcer />
      <a className="skip" href="#content">
        {text.app.skip}
      </a>
      <header className="top">
        <Link href="/" className="brand">
          <img src="/icon.svg" alt="" width="28" height="28" />
          <span>{text.app.name}</span>
        </Link>
        <nav aria-label={text.app.nav}>
          <Tab href="/" path="/">
            {text.app.bench}
          </Tab>
          <Tab href="/ingredients" path="/ingredients">
            {text.app.ingredients}
          </Tab>
          <Tab href="/roles" path="/roles">
            {text.app.roles}
          </Tab>
          <Tab href="/explore" path="/explore">
            {text.explorer.nav}
          </Tab>
          <Tab href="/calculations" path="/calculations">
            {text.app.calculations}
          </Tab>
          <Tab href="/learn" path="/learn">
            {text.app.learn}
          </Tab>
        </nav>
        <LanguageSwitch />
      </header>
      <OfflineNotice />
      <main id="content" tabIndex={-1}>
        {children}
      </main>
      <footer className="foot">
        <p>{text.app.footer}</p>
        <p>
          <Link href="/sources">{text.app.sources}</Link>
        </p>
        <KeptLine />
      </footer>
    </>
  )
}
