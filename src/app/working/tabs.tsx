import { type KeyboardEvent, type ReactNode, useId, useRef } from 'react';

export interface Tab<Name extends string> {
  readonly name: Name;
  readonly title: string;
}
interface Props<Name extends string> {
  readonly label: string;
  readonly tabs: readonly Tab<Name>[];
  readonly chosen: Name | null;
  readonly onChoose: (name: Name) => void;
  /** Stands at the end of the row of tabs. */
  readonly extra?: ReactNode;
  readonly children: ReactNode;
}

/** Tabs as the ARIA practice has them: arrows move along the row, one tab stop for all. */
export function Tabs<Name extends string>(props: Props<Name>) {
  const id = useId();
  const row = useRef<HTMLDivElement>(null);
  const { tabs, chosen, onChoose } = props;
  function move(event: KeyboardEvent): void {
    const to = targetOf(event.key, tabs.length, Math.max(0, indexOf(tabs, chosen)));
    const tab = to === null ? undefined : tabs[to];
    if (to === null || tab === undefined) return;
    event.preventDefault();
    onChoose(tab.name);
    row.current?.querySelectorAll<HTMLElement>('[role="tab"]')[to]?.focus();
  }
  return (
    <div className="tabs" data-chosen={chosen ?? 'none'}>
      <div className="tabs-row">
        <div role="tablist" aria-label={props.label} ref={row} onKeyDown={move}>
          {tabs.map((tab, place) => (
            <button
              key={tab.name}
              type="button"
              role="tab"
              id={`${id}-${tab.name}`}
              aria-selected={tab.name === chosen}
              aria-controls={`${id}-panel`}
              tabIndex={tab.name === chosen || (chosen === null && place === 0) ? 0 : -1}
              onClick={() => onChoose(tab.name)}
            >
              {tab.title}
            </button>
          ))}
        </div>
        {props.extra}
      </div>
      <div
        className="tabs-panel"
        role="tabpanel"
        id={`${id}-panel`}
        aria-labelledby={chosen === null ? undefined : `${id}-${chosen}`}
        hidden={chosen === null}
        // A panel that scrolls must be reachable by keyboard.
        // biome-ignore lint/a11y/noNoninteractiveTabindex: see above
        tabIndex={0}
      >
        {props.children}
      </div>
    </div>
  );
}

function indexOf<Name extends string>(tabs: readonly Tab<Name>[], name: Name | null): number {
  return tabs.findIndex((tab) => tab.name === name);
}

function targetOf(key: string, count: number, at: number): number | null {
  switch (key) {
    case 'ArrowRight':
      return (at + 1) % count;
    case 'ArrowLeft':
      return (at + count - 1) % count;
    case 'Home':
      return 0;
    case 'End':
      return count - 1;
    default:
      return null;
  }
}
