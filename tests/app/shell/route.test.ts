import { describe, expect, it } from 'vitest';
import { hrefOf, parseRoute, type Route } from '../../../src/app/shell/route.ts';

describe('routes', () => {
  const routes: readonly Route[] = [
    { page: 'front' },
    { page: 'practise' },
    { page: 'learner' },
    { page: 'teach' },
    { page: 'paper' },
    { page: 'classes' },
    { page: 'class', id: 'Jgf4_h_6r4DEPLMV' },
    { page: 'projector', id: 'Jgf4_h_6r4DEPLMV', key: 'a-key_of-the-wall' },
    { page: 'class-results', id: 'Jgf4_h_6r4DEPLMV' },
    { page: 'join', code: '' },
    { page: 'join', code: 'ACDEFH' },
    { page: 'seat', code: 'ACDEFH' },
    { page: 'quiz' },
    { page: 'quiz-taking', quiz: '20260504100000000' },
    { page: 'quiz-result', quiz: '20260504100000000' },
    { page: 'watch', scenario: 'healthy-start', projector: false },
    { page: 'blind', number: 7 },
    { page: 'watch', scenario: 'an odd/name %', projector: true },
    { page: 'job', id: 'a-job' },
    { page: 'job', id: 'a-job', guidance: 'assessment' },
    { page: 'drill', id: 'an odd/drill %' },
    { page: 'lesson', id: 'a-lesson' },
    { page: 'branch', id: 'an odd/job %', branch: 2 },
  ];
  it.each(routes)('$page leads back to itself', (route) => {
    expect(parseRoute(hrefOf(route))).toEqual(route);
  });

  it.each([
    '',
    '#',
    '#/nowhere',
    '#/practise/watch',
    '#/practise/watch/%E0%A4%A',
    '#/quiz/more',
    '#/quiz/take/yesterday',
    '#/practise/blind/x',
    '#/practise/job',
    '#/teach/job/a-job',
    '#/teach/class/short',
    '#/teach/class/Jgf4_h_6r4DEPLMV/projector',
    '#/teach/class/Jgf4_h_6r4DEPLMV/elsewhere/a-key_of-the-wall',
  ])('%s leads to the first page', (hash) => {
    expect(parseRoute(hash)).toEqual({ page: 'front' });
  });
});
