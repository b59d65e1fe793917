import type { RaceSheet } from '../../core/prepare/paper/raceSheet.ts';

/** Everything about the race on one page. */
export const RacePage = ({ sheet, dateText }: { sheet: RaceSheet; dateText: string }) => (
  <article class="sheet-page race-page" aria-label="Race sheet">
    <header>
      <h2>
        {sheet.title}
        {dateText !== '' && <span class="page-date"> {dateText}</span>}
      </h2>
    </header>
    <dl class="page-facts">
      {sheet.facts.map((fact) => (
        <div key={fact.label}>
          <dt>{fact.label}</dt>
          <dd>{fact.text}</dd>
        </div>
      ))}
    </dl>
    <div class="page-columns">
      <section>
        <h3>Before</h3>
        {sheet.day.length === 0 ? (
          <p>Not planned yet: see Race day.</p>
        ) : (
          <table>
            <tbody>
              {sheet.day.map((row) => (
                <tr key={row.what}>
                  <th scope="row">{row.time}</th>
                  <td>{row.what}</td>
                </tr>
              ))}
            </tbody>
          </table>
        )}
        <h3>On the way</h3>
        <ol>
          {sheet.legs.map((leg) => (
            <li key={leg}>{leg}</li>
          ))}
        </ol>
      </section>
      <section>
        <h3>Checkpoints</h3>
        <table>
          <tbody>
            {sheet.checkpoints.map((row) => (
              <tr key={row.place}>
                <th scope="row">{row.place}</th>
                <td>
                  <strong>{row.time}</strong>
                </td>
                <td>{row.perKm}</td>
              </tr>
            ))}
          </tbody>
        </table>
        {sheet.cutOffs.length > 0 && (
          <>
            <h3>Cut-offs</h3>
            <table>
              <tbody>
                {sheet.cutOffs.map((row) => (
                  <tr key={row.place}>
                    <th scope="row">{row.place}</th>
                    <td>{row.time}</td>
                  </tr>
                ))}
              </tbody>
            </table>
          </>
        )}
        <h3>Water and fuel</h3>
        {sheet.supplies.length === 0 ? (
          <p>None in the plan.</p>
        ) : (
          <table>
            <tbody>
              {sheet.supplies.map((row) => (
                <tr key={`${row.place} ${row.text}`}>
                  <th scope="row">{row.place}</th>
                  <td>{row.text}</td>
                </tr>
              ))}
            </tbody>
          </table>
        )}
      </section>
    </div>
    <section class="page-cautions">
      <h3>To mind</h3>
      <ul>
        {sheet.cautions.map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ul>
    </section>
  </article>
);
