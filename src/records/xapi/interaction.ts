/** A question as an activity, and an answer to it as its response. */
import type { GivenAnswer, Item, Response } from '../../quiz/index.ts';
import { farthestOff } from '../../quiz/taking/index.ts';
import type { ItemInWords } from '../item-in-words.ts';
import {
  extension,
  iriPath,
  LANGUAGE,
  type XapiActivity,
  type XapiDefinition,
  type XapiWords,
} from './statement.ts';

const INTERACTION = 'http://adlnet.gov/expapi/activities/cmi.interaction';
/** Between the parts of a response, and between the ends of a range. */
const BETWEEN = '[,]';
const TO = '[:]';
const INTERACTION_TYPES = { choice: 'choice', order: 'sequencing', number: 'numeric' } as const;

/** @param known the question itself; without it the activity says only how it is answered */
export function activityOf(
  answer: GivenAnswer,
  known: ItemInWords | undefined,
  homepage: string,
  words: XapiWords,
): XapiActivity {
  const asks = known?.words.asks ?? words.kinds[answer.kind];
  return {
    objectType: 'Activity',
    id: `${homepage}/items/${iriPath(answer.item.split('/'))}`,
    definition: {
      type: INTERACTION,
      // With the id, since many a question asks the same of another start.
      name: { [LANGUAGE]: `${asks} (${answer.item})` },
      interactionType: INTERACTION_TYPES[answer.response.is],
      ...(known === undefined ? {} : wordsOf(known)),
      ...(known === undefined ? {} : rightOf(known.item)),
      extensions: {
        [extension('kind')]: answer.kind,
        [extension('topic')]: answer.topic,
        [extension('plant')]: answer.plant,
        ...shownOf(known),
      },
    },
  };
}

/** Numbers are in SI, whatever unit they were shown in, so that one answer is one statement. */
export function responseText(response: Response): string {
  switch (response.is) {
    case 'choice':
      return optionId(response.option);
    case 'order':
      return response.order.map(optionId).join(BETWEEN);
    case 'number':
      return digitsOf(response.value);
  }
}

function wordsOf({ words }: ItemInWords): Pick<XapiDefinition, 'description' | 'choices'> {
  const told = [...words.tells, ...words.start, ...words.readings, words.asks];
  return {
    description: { [LANGUAGE]: told.join('\n') },
    ...choicesOf(words),
  };
}

/** The pattern is in SI; what it asks for may have been shown in another unit. */
function shownOf(known: ItemInWords | undefined): Readonly<Record<string, string>> {
  return known?.words.answer === 'number'
    ? { [extension('right-as-shown')]: known.words.said }
    : {};
}

function choicesOf(words: ItemInWords['words']): Pick<XapiDefinition, 'choices'> {
  if (words.answer === 'number') return {};
  const options = words.answer === 'order' ? words.steps : words.options;
  const choices = options.map(({ text }, place) => ({
    id: optionId(place),
    description: { [LANGUAGE]: text },
  }));
  return { choices };
}

function rightOf(item: Item): Pick<XapiDefinition, 'correctResponsesPattern'> {
  switch (item.answer) {
    case 'choice':
    case 'spot':
      return { correctResponsesPattern: [optionId(item.key)] };
    case 'order':
      return { correctResponsesPattern: [item.key.map(optionId).join(BETWEEN)] };
    case 'number': {
      const reach = farthestOff(item);
      const [from, to] = [item.key - reach, item.key + reach].map(digitsOf);
      return { correctResponsesPattern: [`${from}${TO}${to}`] };
    }
  }
}

/** Not every reader knows an exponent. */
function digitsOf(value: number): string {
  const text = String(value);
  return text.includes('e') ? value.toFixed(20).replace(/\.?0+$/, '') : text;
}

function optionId(place: number): string {
  return `option-${place + 1}`;
}
