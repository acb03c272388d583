import { Component } from 'react'
import type { ReactNode } from 'react'
import { text } from '#web/text/text.ts'

/** Catches a fault of the page itself, so that a person sees words and not a blank screen. */
export class Boundary extends Component<{ children: ReactNode }, { broken: boolean }> {
  override state = { broken: false }
  static getDerivedStateFromError() {
    return { broken: true }
  }
  override render() {
    return this.state.broken ? <p role="alert">{text.app.crashed}</p> : this.props.children
  }
}
