import { type ReactNode, useEffect, useMemo, useState } from 'react';
import { say } from '../../i18n/index.ts';
import type {
  HeldLeads,
  Ladder,
  LadderPlace,
  LadderWiring,
  Lead,
  loadLadder,
} from '../../view/index.ts';
import { useStore } from '../session/store.ts';
import { settings } from '../settings/settings.ts';
import { LadderSearch } from './ladder-search.tsx';
import { viewMessage } from './view-words.ts';

/** Leads on the ladder, as whoever owns the meter keeps them. */
export interface LadderMeter {
  readonly leads: HeldLeads;
  /** A clamp round one wire. */
  readonly single: boolean;
  readonly onLeads: (leads: HeldLeads) => void;
}

interface Props {
  readonly wiring: LadderWiring;
  readonly drawing: Ladder;
  readonly words: Pick<Awaited<ReturnType<typeof loadLadder>>, 'ladderPlaces' | 'findPlaces'>;
  readonly meter: LadderMeter | null;
  readonly isLive: boolean;
  /** Beside the search. */
  readonly extra: ReactNode;
  /** Beside the leads: what they read. */
  readonly strip: ReactNode;
}

/** Above the ladder: search, symbols, and the leads of the meter in use. */
export function LadderTools({ wiring, drawing, words, meter, isLive, extra, strip }: Props) {
  const { symbols } = useStore(settings);
  const places = useMemo(() => words.ladderPlaces(wiring, viewMessage), [words, wiring]);
  const [shown, setShown] = useState<LadderPlace | null>(null);
  useEffect(() => {
    drawing.showPlace(shown?.id ?? null);
  }, [drawing, shown]);
  return (
    <section className="ladder-tools" aria-label={say('ladder.tools')}>
      <div className="ladder-tools-row">
        <div className="ladder-find">
          <LadderSearch places={places} find={words.findPlaces} onChoose={setShown} />
          {meter !== null && shown !== null && shown.kind !== 'device' ? (
            <PutHere place={shown} meter={meter} />
          ) : null}
        </div>
        <SymbolsButton symbols={symbols} />
        {extra}
        {meter === null ? null : (
          <LeadHolders
            meter={meter}
            drawing={drawing}
            places={places}
            hint={say(isLive ? 'ladder.leads.hint' : 'ladder.leads.hint-paper')}
            strip={strip}
          />
        )}
      </div>
    </section>
  );
}

function SymbolsButton({ symbols }: { readonly symbols: 'IEC' | 'NA' }) {
  const other = symbols === 'IEC' ? 'NA' : 'IEC';
  const label = say(`ladder.symbols.${symbols}.long`);
  return (
    <button
      type="button"
      className="button"
      aria-label={label}
      title={label}
      onClick={() => settings.write({ symbols: other })}
    >
      {say(`ladder.symbols.${symbols}`)}
    </button>
  );
}

function PutHere({ place, meter }: { readonly place: LadderPlace; readonly meter: LadderMeter }) {
  const { leads, single, onLeads } = meter;
  const lead: Lead = single ? 'from' : leads.hand;
  return (
    <button
      type="button"
      className="button ladder-put"
      onClick={() =>
        onLeads({
          ...leads,
          [lead]: place.id,
          hand: lead === 'from' && !single ? 'to' : 'from',
        })
      }
    >
      {say('ladder.leads.here', { lead: leadName(lead, single) })}
    </button>
  );
}

interface HoldersProps {
  readonly meter: LadderMeter;
  readonly drawing: Ladder;
  readonly places: readonly LadderPlace[];
  /** Said while no lead is on. */
  readonly hint: string;
  readonly strip: ReactNode;
}

function LeadHolders({ meter, drawing, places, hint, strip }: HoldersProps) {
  const { leads, single, onLeads } = meter;
  const labels = useMemo(() => new Map(places.map(({ id, label }) => [id, label])), [places]);
  const used: readonly Lead[] = single ? ['from'] : ['from', 'to'];
  const where = (lead: Lead): string => {
    const place = leads[lead];
    return place === null ? say('ladder.leads.in-holder') : (labels.get(place) ?? place);
  };
  return (
    <>
      {/* biome-ignore lint/a11y/useSemanticElements: a fieldset is for fields of a form */}
      <div className="ladder-holders" role="group" aria-label={say('ladder.leads')}>
        {used.map((lead) => (
          <button
            key={lead}
            type="button"
            className="button ladder-holder"
            data-lead={lead}
            aria-pressed={single || leads.hand === lead}
            aria-label={say('ladder.leads.holder', {
              lead: shortName(lead, single),
              place: where(lead),
            })}
            onPointerDown={(event) => drawing.dragLead(lead, event.nativeEvent)}
            onClick={() => onLeads({ ...leads, hand: lead })}
          >
            <span className="ladder-holder-tip" aria-hidden="true" />
            {shortName(lead, single)}
          </button>
        ))}
      </div>
      {strip}
      <p className="ladder-where" role="status">
        {used.every((lead) => leads[lead] === null)
          ? hint
          : used
              .map((lead) =>
                say(leads[lead] === null ? 'ladder.leads.off' : 'ladder.leads.now', {
                  lead: leadName(lead, single),
                  place: where(lead),
                }),
              )
              .join(' · ')}
      </p>
    </>
  );
}

function shortName(lead: Lead, single: boolean): string {
  return say(single ? 'ladder.leads.clamp' : `ladder.leads.${lead}`);
}

function leadName(lead: Lead, single: boolean): string {
  return say(single ? 'ladder.lead.clamp' : `ladder.lead.${lead}`);
}
