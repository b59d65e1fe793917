interface Props {
  /** What goes, said in full to those who do not see where the button stands. */
  readonly label: string;
  readonly onClick: () => void;
}

/** The small cross behind a row. */
export const Remove = ({ label, onClick }: Props) => (
  <button type="button" class="small-button" aria-label={label} onClick={onClick}>
    ×
  </button>
);
