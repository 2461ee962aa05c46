import { Component, type ComponentChildren } from "preact";

/** A view that is drawn anew only when one of its properties has changed: in long lists the unchanged cost nothing. */
export function whenChanged<Props extends object>(view: (props: Props) => ComponentChildren) {
  return class extends Component<Props> {
    override shouldComponentUpdate(next: Props): boolean {
      return Object.entries(next).some(([key, value]) => this.props[key as keyof Props] !== value);
    }

    override render() {
      return view(this.props);
    }
  };
}
