import { say, sayWord } from '../../i18n/index.ts';
import type { ReasoningNow } from '../job/use-reasoning.ts';

/** Why decisions are not weighed; nothing is said while they still are. */
export function NoReasoning({ reasoned }: { readonly reasoned: ReasoningNow }) {
  if (reasoned.upTo === null) {
    return (
      <p className="quiet" role="status">
        {say('debrief.reasoning-waiting')}
      </p>
    );
  }
  return (
    <section className="debrief-part" aria-labelledby="no-reasoning-title">
      <h2 id="no-reasoning-title">{say('debrief.no-reasoning')}</h2>
      <p>{sayWord('debrief.no-reasoning', reasoned.trouble ?? 'none')}</p>
    </section>
  );
}
