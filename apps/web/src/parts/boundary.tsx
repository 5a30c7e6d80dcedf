import type { ReactNode } from 'react'
import { Component } from 'react'

interface Props {
  /** What is shown in its place, with what went wrong. */
  readonly instead: (detail: string) => ReactNode
  /** Another value begins anew. */
  readonly of: string
  readonly children: ReactNode
}

interface State {
  readonly detail: string | undefined
  readonly of: string
}

/** Keeps what one screen cannot draw from taking the others with it: only a class can. */
export class Boundary extends Component<Props, State> {
  override state: State = { detail: undefined, of: this.props.of }

  static getDerivedStateFromError(error: unknown): Partial<State> {
    return { detail: error instanceof Error ? error.message : String(error) }
  }

  static getDerivedStateFromProps(props: Props, state: State): Partial<State> | null {
    return props.of === state.of ? null : { detail: undefined, of: props.of }
  }

  override render(): ReactNode {
    const { detail } = this.state
    return detail === undefined ? this.props.children : this.props.instead(detail)
  }
}
