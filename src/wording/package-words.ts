import { say } from '../i18n/index.ts';

/** What a quiz is called, and what it is, where a learning system lists it. */
export function quizPackageWords(number: number, count: number) {
  return {
    title: say('package.quiz.title', { number }),
    about: say(count === 1 ? 'package.quiz.about.one' : 'package.quiz.about', { count }),
  };
}
