import { Link } from 'wouter'
import { useTitle } from '#web/client/use-title.ts'
import { text } from '#web/text/text.ts'

export function NotFoundPage() {
  useTitle(text.app.notFound)
  return (
    <div className="page">
      <h1>{text.app.notFound}</h1>
      <p>
        <Link href="/">{text.app.backToBench}</Link>
      </p>
    </div>
  )
}
