import Link from '@docusaurus/Link';
import type { ReactNode } from 'react';
import type { AnswersView, EstimateView } from '../../data/estimate-evidence.js';
import { EvidencePage } from '../parts/EvidencePage.js';
import { Reliability } from '../parts/Reliability.js';
import { Scroll } from '../parts/Scroll.js';

function Shares({ view: { readings, trials } }: { readonly view: EstimateView }): ReactNode {
  const rows: readonly (readonly [string, (answers: AnswersView) => string, string])[] = [
    ['Hidden cause comes first', ({ first }) => first, '75 % or more; with trials 90 %'],
    ['Chance stated for the cause that comes first, mean', ({ statedFirst }) => statedFirst, 'as the line above'],
    ['Hidden cause among the first two', ({ firstTwo }) => firstTwo, '95 % or more'],
    ['Brier score (0 is perfect, 2 always wrong)', ({ brier }) => brier, 'low'],
    ['Soot within its 90 % range', ({ sootCovered }) => sootCovered, '85 to 95 %'],
    ['Ash within its 90 % range', ({ ashCovered }) => ashCovered, '85 to 95 %'],
    ['Soot above 5 g/L', ({ aboveSeen, aboveStated }) => `${aboveSeen}; stated ${aboveStated}`, 'no more than stated'],
    [
      'Soot above 5 g/L where a chance of at most 5 % was stated',
      ({ permittedSeen, permittedStated, permittedCases }) => `${permittedSeen} of ${permittedCases} cases; stated ${permittedStated}`,
      'no more than stated',
    ],
    ['Answers that say they rest on too few draws', ({ fewDraws }) => fewDraws, 'few'],
  ];
  return (
    <Scroll label="What the answers were worth">
      <table>
        <thead>
          <tr>
            <th scope="col">Measure</th>
            <th scope="col">From readings</th>
            <th scope="col">With trials</th>
            <th scope="col">Goal</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(([label, text, goal]) => (
            <tr key={label}>
              <th scope="row">{label}</th>
              <td>{text(readings)}</td>
              <td>{text(trials)}</td>
              <td>{goal}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </Scroll>
  );
}

function Goals({ view: { goals } }: { readonly view: EstimateView }): ReactNode {
  return (
    <Scroll label="Goals and whether they were met">
      <table>
        <thead>
          <tr>
            <th scope="col">Goal</th>
            <th scope="col">Seen</th>
            <th scope="col">Met</th>
          </tr>
        </thead>
        <tbody>
          {goals.map(({ goal, seen, met }) => (
            <tr key={goal}>
              <th scope="row">{goal}</th>
              <td>{seen}</td>
              <td>{met ? 'met' : 'not met'}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </Scroll>
  );
}

/** What a reader must know before the figures are believed. */
function Caveats({ view: { firstVehicle, lastVehicle, lookedAtTo } }: { readonly view: EstimateView }): ReactNode {
  return (
    <>
      <h2 id="how-far-to-trust">How far to trust these figures</h2>
      <ul>
        <li>
          The ranges of the invented vehicles were changed after results had been seen: how much soot a blocked filter holds, how large the
          filter of a light engine is, and how often each cause is hidden. Each change went towards what the collected references say, but
          it was not made blindly.
        </li>
        <li>
          While estimate and vehicles were made, vehicles 1 to {lookedAtTo} were looked at.{' '}
          {firstVehicle > lookedAtTo
            ? `The figures of this page are those of vehicles ${firstVehicle} to ${lastVehicle}, judged in one run; nobody had looked at them before. Afterwards one rule was added, that nothing is done on an answer of too few draws, and the vehicles with such an answer were judged anew.`
            : 'They are among the vehicles of this page, whose answers were stored in several runs, so that its figures may be better than those of vehicles that nobody has looked at.'}
        </li>
        <li>
          Some things are assumed alike by the vehicles and by the estimate, and these figures cannot show whether they are true: the
          reasons for which vehicles come to a workshop, how many control units count their soot and how many take it from the drop, and how
          often each trial shows what it should. All are common practice without a source. Where they are otherwise, the answers are worse.
        </li>
        <li>No figure here comes from a real vehicle.</li>
      </ul>
    </>
  );
}

function Answers({ id, title, answers }: { readonly id: string; readonly title: string; readonly answers: AnswersView }): ReactNode {
  return (
    <section aria-labelledby={id}>
      <h2 id={id}>{title}</h2>
      <Reliability id={`${id}-plot`} title={`${title}: stated chances against what came true`} bins={answers.reliability} />
      <Scroll label={`${title}: stated chances and how often they came true`}>
        <table>
          <thead>
            <tr>
              <th scope="col">Stated</th>
              <th scope="col">Statements</th>
              <th scope="col">Mean stated</th>
              <th scope="col">Came true</th>
            </tr>
          </thead>
          <tbody>
            {answers.reliability.map((bin) => (
              <tr key={bin.range}>
                <th scope="row">{bin.range}</th>
                <td>{bin.count}</td>
                <td>{bin.statedText}</td>
                <td>{bin.seenText}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </Scroll>
      <Scroll label={`${title}: hidden cause and what came first`}>
        <table>
          <thead>
            <tr>
              <th scope="col">Hidden</th>
              <th scope="col">Cases</th>
              <th scope="col">Came first</th>
              <th scope="col">What came first instead</th>
            </tr>
          </thead>
          <tbody>
            {answers.confusion.map((row) => (
              <tr key={row.hidden}>
                <th scope="row">{row.hidden}</th>
                <td>{row.cases}</td>
                <td>{row.right}</td>
                <td>{row.taken.length === 0 ? 'none' : row.taken.join('; ')}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </Scroll>
    </section>
  );
}

/** How good the estimate of the filter is on invented vehicles, failures included. */
export default function EstimatePage({ evidence: view }: { readonly evidence: EstimateView }): ReactNode {
  return (
    <EvidencePage
      title="The estimate on invented vehicles"
      purpose={`${view.cases} invented vehicles with a hidden cause, judged by the estimate from what a technician could read: how often it was right, and how often it said so rightly.`}
    >
      <p>
        The vehicles are made by another model than the estimate uses: flow and pressure along the channels, soot in the pores of the wall,
        gas that slips, recirculation, noise and rounding to a millibar. How often each cause is hidden follows common practice, which has
        no source and which the starting chances of the estimate rest on too; the tables below give each cause by itself, so that another
        mix can be worked out. The readings are three speeds and a zero, and where they are known the distance, the distance since the last
        regeneration, the reason of the visit and the control unit’s own figures. The trials are those of the hoses, the tail pipe, a gauge
        and the back-pressure, then the answer to a regeneration where heat is allowed, or rod and scales where the filter comes off.
      </p>
      <Caveats view={view} />
      <h2 id="goals">Goals</h2>
      <Goals view={view} />
      <h2 id="worth">What the answers were worth</h2>
      <Shares view={view} />
      <p>
        {view.plansThatHeat === 0
          ? 'None of these vehicles got a plan that heats the filter, so that the count of plans that damage one rests on nothing: it shows that the plans are careful, not that their heat is safe.'
          : `Of these vehicles, ${view.plansThatHeat} got a plan that heats the filter; the axial model, with a drop to idle at the worst moment, damages ${view.damagedPlans} of them. That count rests on ${view.plansThatHeat} plans, not on all ${view.cases} vehicles.`}{' '}
        The soot load alone, before any other condition of the permission, would have allowed heat for {view.allowedByLoad} filters; the
        axial model, with a drop to idle at the worst moment, damages {view.damagedByLoad} of these
        {view.damagedByLoad === 0
          ? `, which shows with 95 % confidence that fewer than ${view.damagedAtMost} of such filters would be damaged, if the model is right`
          : ''}
        .
      </p>
      <h2 id="cannot-be-told-apart">What readings cannot tell apart</h2>
      <p>
        A leaking hose, a plugged hose that leaks a little and a cracked core each lower the drop by about the same share at every flow: the
        readings are the same, and only a trial decides. A restriction before the filter does not show in its drop at all. A filter full of
        ash and one full of soot from an engine that makes too much of it have the same drop, and the control unit knows of neither. Where
        the chance stated for the first cause is near the share that came true, the rest is missing from the readings, as far as this model
        of them can tell.
      </p>
      <Answers id="readings" title="From readings alone" answers={view.readings} />
      <Answers id="trials" title="With the trials" answers={view.trials} />
      <h2 id="failures">Not among the first two, even with trials</h2>
      {view.failures.length === 0 ? (
        <p>None.</p>
      ) : (
        <details>
          <summary>{`${view.failures.length} vehicles`}</summary>
          <ul>
            {view.failures.map(({ seed, hidden, said }) => (
              <li key={seed}>{`Vehicle ${seed}: hidden, ${hidden}; said, ${said}`}</li>
            ))}
          </ul>
        </details>
      )}
      <p>
        Marked by version {view.version} of this evaluation, vehicles {view.firstVehicle} to {view.lastVehicle}. See also the{' '}
        <Link to="/guide/workshop">guide to the workshop</Link>.
      </p>
    </EvidencePage>
  );
}
