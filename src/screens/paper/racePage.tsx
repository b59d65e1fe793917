import type { RaceSheet } from '../../core/prepare/paper/raceSheet.ts';
import { t } from '../../languages/text.ts';

/** Everything about the race on one page. */
export const RacePage = ({ sheet, dateText }: { sheet: RaceSheet; dateText: string }) => (
  <article class="sheet-page race-page" aria-label={t('Race sheet')}>
    <header>
      <h2>
        {sheet.title}
        {dateText !== '' && <span class="page-date"> {dateText}</span>}
      </h2>
    </header>
    <dl class="page-facts">
      {sheet.facts.map((fact) => (
        <div key={fact.label.text}>
          <dt>{t(fact.label)}</dt>
          <dd>{typeof fact.text === 'string' ? fact.text : t(fact.text)}</dd>
        </div>
      ))}
    </dl>
    <div class="page-columns">
      <section>
        <h3>{t('Before')}</h3>
        {sheet.day.length === 0 ? (
          <p>{t('Not planned yet: see Race day.')}</p>
        ) : (
          <table>
            <tbody>
              {sheet.day.map((row) => (
                <tr key={row.what.text}>
                  <th scope="row">{row.time}</th>
                  <td>{t(row.what)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        )}
        <h3>{t('On the way')}</h3>
        <ol>
          {sheet.legs.map((leg) => (
            <li key={leg.text}>{t(leg)}</li>
          ))}
        </ol>
      </section>
      <section>
        <h3>{t('Checkpoints')}</h3>
        <table>
          <tbody>
            {sheet.checkpoints.map((row) => (
              <tr key={t(row.place)}>
                <th scope="row">{t(row.place)}</th>
                <td>
                  <strong>{row.time}</strong>
                </td>
                <td>{t(row.perKm)}</td>
              </tr>
            ))}
          </tbody>
        </table>
        {sheet.cutOffs.length > 0 && (
          <>
            <h3>{t('Cut-offs')}</h3>
            <table>
              <tbody>
                {sheet.cutOffs.map((row) => (
                  <tr key={t(row.place)}>
                    <th scope="row">{t(row.place)}</th>
                    <td>{t(row.time)}</td>
                  </tr>
                ))}
              </tbody>
            </table>
          </>
        )}
        <h3>{t('Water and fuel')}</h3>
        {sheet.supplies.length === 0 ? (
          <p>{t('None in the plan.')}</p>
        ) : (
          <table>
            <tbody>
              {sheet.supplies.map((row) => (
                <tr key={`${t(row.place)} ${t(row.text)}`}>
                  <th scope="row">{t(row.place)}</th>
                  <td>{t(row.text)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        )}
      </section>
    </div>
    <section class="page-cautions">
      <h3>{t('Take care')}</h3>
      <ul>
        {sheet.cautions.map((caution) => (
          <li key={caution.text}>{t(caution)}</li>
        ))}
      </ul>
    </section>
  </article>
);
