/** What can be opened beside the board, in the order of its buttons. */
import type { ComponentType } from 'react';
import { say } from '../../i18n/index.ts';
import { FaultPanel } from './fault-panel.tsx';
import { HintPanel } from './hint-panel.tsx';
import { LogPanel } from './log-panel.tsx';
import type { OwnClass } from './own-classes.ts';
import { PollInClass } from './poll-in-class.tsx';
import { ShowPanel } from './show-panel.tsx';
import { SurroundingsPanel } from './surroundings-panel.tsx';
import { ToolsPanel } from './tools-panel.tsx';

export interface Panel {
  readonly name: string;
  readonly title: () => string;
  /** On its button. */
  readonly short: () => string;
  /** Whether there is anything in it to do in such a class. */
  readonly suits: (own: OwnClass) => boolean;
  readonly Content: ComponentType;
}
export type PanelName = Panel['name'];

const always = () => true;
const withPlant = ({ kind }: OwnClass) => kind !== 'quiz';
/** Only there are tools taken in hand. */
const withTools = ({ kind }: OwnClass) => kind === 'job' || kind === 'drill';

export const PANELS: readonly Panel[] = [
  {
    name: 'fault',
    title: () => say('teach-class.panel.fault'),
    short: () => say('teach-class.panel.fault.short'),
    suits: withPlant,
    Content: FaultPanel,
  },
  {
    name: 'surroundings',
    title: () => say('teach-class.panel.surroundings'),
    short: () => say('teach-class.panel.surroundings.short'),
    suits: withPlant,
    Content: SurroundingsPanel,
  },
  {
    name: 'tools',
    title: () => say('teach-class.panel.tools'),
    short: () => say('teach-class.panel.tools.short'),
    suits: withTools,
    Content: ToolsPanel,
  },
  {
    name: 'hint',
    title: () => say('teach-class.panel.hint'),
    short: () => say('teach-class.panel.hint.short'),
    suits: always,
    Content: HintPanel,
  },
  {
    name: 'poll',
    title: () => say('teach-class.panel.poll'),
    short: () => say('teach-class.panel.poll.short'),
    suits: always,
    Content: PollInClass,
  },
  {
    name: 'show',
    title: () => say('teach-class.panel.show'),
    short: () => say('teach-class.panel.show.short'),
    suits: always,
    Content: ShowPanel,
  },
  {
    name: 'log',
    title: () => say('teach-class.panel.log'),
    short: () => say('teach-class.panel.log.short'),
    suits: always,
    Content: LogPanel,
  },
];
