/** The figures of a drawing, as a table that anybody can read: by eye, by screen reader, on paper. */
export const TableBehind = ({
  title,
  head,
  rows,
  open = false,
}: {
  title: string;
  head: readonly string[];
  rows: readonly (readonly string[])[];
  open?: boolean;
}) => (
  <details class="behind" open={open}>
    <summary>{title}</summary>
    {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keys (axe: scrollable-region-focusable) */}
    <section class="scroll" aria-label={title} tabIndex={0}>
      <table>
        <thead>
          <tr>
            {head.map((h) => (
              <th key={h} scope="col">
                {h}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row[0]}>
              {row.map((cell, i) =>
                i === 0 ? (
                  <th key={head[i]} scope="row">
                    {cell}
                  </th>
                ) : (
                  <td key={head[i]} class="figure">
                    {cell}
                  </td>
                ),
              )}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  </details>
);
