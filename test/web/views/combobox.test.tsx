// @vitest-environment happy-dom
import { QueryClientProvider } from '@tanstack/react-query'
import { fireEvent, render, screen, waitFor } from '@testing-library/react'
import { useState } from 'react'
import { describe, expect, test, vi } from 'vitest'
import { makeQueryClient } from '#web/client/query-client.ts'
import { Combobox } from '#web/parts/combobox.tsx'
import type { Picked } from '#web/state/edit.ts'
import { startEmpty } from './show.tsx'

startEmpty()

const name = (ingredient: string, tier = 'full') => ({
  ingredient,
  inci: ingredient.toUpperCase(),
  tier,
  by: 'beginning',
  roles: ['Humectant'],
})

/** A server that answers when it is told to; each text is waited for by itself. */
function slowServer() {
  const waiting = new Map<string, (names: unknown[]) => void>()
  vi.stubGlobal('fetch', (input: string) => {
    const text = new URL(input, 'http://localhost').searchParams.get('text') ?? ''
    return new Promise<Response>((resolve) => {
      waiting.set(text, (names) => resolve(Response.json({ names, graphVersion: 'test' })))
    })
  })
  const answer = async (text: string, ...ids: string[]) => {
    await waitFor(() => expect(waiting.has(text)).toBe(true))
    waiting.get(text)?.(ids.map((id) => name(id)))
  }
  return { answer }
}

function Field({ onPick, onText }: { onPick: (picked: Picked) => void; onText: (typed: string) => void }) {
  const [typed, setTyped] = useState('')
  return <Combobox label="Name" typed={typed} onType={setTyped} onPick={onPick} onText={onText} />
}

function showField() {
  const picked: Picked[] = []
  const texts: string[] = []
  render(
    <QueryClientProvider client={makeQueryClient(false)}>
      <Field onPick={(one) => picked.push(one)} onText={(text) => texts.push(text)} />
    </QueryClientProvider>,
  )
  const field = screen.getByRole<HTMLInputElement>('combobox', { name: 'Name' })
  const type = (value: string) => fireEvent.change(field, { target: { value } })
  const press = (key: string) => fireEvent.keyDown(field, { key })
  return { field, type, press, picked, texts }
}

const options = () => screen.queryAllByRole('option').map(({ textContent }) => textContent)

describe('a field that suggests names', () => {
  test('is closed until something is typed, and controls its list all the time', () => {
    slowServer()
    const { field } = showField()
    expect(field.getAttribute('aria-expanded')).toBe('false')
    expect(document.getElementById(field.getAttribute('aria-controls') ?? '')?.getAttribute('role')).toBe('listbox')
  })
  test('an answer that comes late does not take the place of that to a later text', async () => {
    const server = slowServer()
    const { type } = showField()
    type('gl')
    await waitFor(() => expect(screen.getAllByRole('status').length).toBeGreaterThan(0))
    await new Promise((resolve) => setTimeout(resolve, 200))
    type('glyc')
    await server.answer('glyc', 'glycerin')
    await waitFor(() => expect(options().join()).toContain('Glycerin'))
    await server.answer('gl', 'glutaral')
    await new Promise((resolve) => setTimeout(resolve, 100))
    expect(options().join()).not.toContain('Glutaral')
  })
  test('arrows go round the list and name the chosen one to a screen reader; Enter takes it', async () => {
    const server = slowServer()
    const { field, type, press, picked } = showField()
    type('gly')
    await server.answer('gly', 'glycerin', 'glycine')
    await waitFor(() => expect(options()).toHaveLength(2))
    expect(field.getAttribute('aria-activedescendant')).toBeNull()
    press('ArrowUp')
    const active = () => document.getElementById(field.getAttribute('aria-activedescendant') ?? '')?.textContent
    expect(active()).toContain('Glycine')
    press('ArrowDown')
    expect(active()).toContain('Glycerin')
    expect(screen.getAllByRole('option')[0]?.getAttribute('aria-selected')).toBe('true')
    press('Enter')
    expect(picked).toEqual([{ ingredient: 'glycerin', name: 'Glycerin' }])
    expect(field.getAttribute('aria-expanded')).toBe('false')
  })
  test('Enter without a choice keeps the text, whatever the list says', async () => {
    const server = slowServer()
    const { type, press, picked, texts } = showField()
    type('3 % gly')
    await server.answer('3 % gly', 'glycerin')
    await waitFor(() => expect(options()).toHaveLength(1))
    press('Enter')
    expect(texts).toEqual(['3 % gly'])
    expect(picked).toEqual([])
  })
  test('no key takes a name of an earlier text', async () => {
    const server = slowServer()
    const { type, press, picked, texts } = showField()
    type('gly')
    await server.answer('gly', 'glycerin')
    await waitFor(() => expect(options()).toHaveLength(1))
    type('glyx')
    press('ArrowDown')
    press('Enter')
    expect(picked).toEqual([])
    expect(texts).toEqual(['glyx'])
  })
  test('Escape closes the list and leaves the text', async () => {
    const server = slowServer()
    const { field, type, press } = showField()
    type('gly')
    await server.answer('gly', 'glycerin')
    await waitFor(() => expect(options()).toHaveLength(1))
    press('Escape')
    expect(field.getAttribute('aria-expanded')).toBe('false')
    expect(field.value).toBe('gly')
  })
  test('a list without a name says so and keeps the way open', async () => {
    const server = slowServer()
    const { type } = showField()
    type('zzzz')
    await server.answer('zzzz')
    expect(await screen.findByText('No name fits. Enter keeps the text as it is.')).toBeTruthy()
  })
})
