import type { ComponentChildren } from 'preact';

interface Props {
  readonly label: string;
  readonly children: ComponentChildren;
}

/** A form whose fields count as they are typed: nothing is ever sent. */
export const Form = ({ label, children }: Props) => (
  <form class="plan-form" onSubmit={(event) => event.preventDefault()} aria-label={label}>
    {children}
  </form>
);
