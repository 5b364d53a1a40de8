import { LANGUAGE } from '../xapi/statement.ts';
import { element, xmlText } from '../xml/xml.ts';
import { PACKAGES, type Packaged } from './packaged.ts';

const COURSE = 'https://w3id.org/xapi/profiles/cmi5/v1/CourseStructure.xsd';
const ACTIVITY = {
  job: 'http://adlnet.gov/expapi/activities/simulation',
  drill: 'http://adlnet.gov/expapi/activities/simulation',
  lesson: 'http://adlnet.gov/expapi/activities/lesson',
  quiz: 'http://adlnet.gov/expapi/activities/assessment',
} as const;

/** `cmi5.xml`: a course of one assignable unit. What there is to know of it `about` says. */
export function cmi5CourseXml(packaged: Packaged, about: string, page: string): string {
  const { id, title, exercise, mastery } = packaged;
  const words = [text('title', title), text('description', about)];
  return xmlText(
    element('courseStructure', { xmlns: COURSE }, [
      element('course', { id: `${PACKAGES}/${id}` }, words),
      element(
        'au',
        {
          id: `${PACKAGES}/${id}/exercise`,
          moveOn: mastery === null ? 'Completed' : 'Passed',
          ...(mastery === null ? {} : { masteryScore: String(mastery) }),
          launchMethod: 'AnyWindow',
          activityType: ACTIVITY[exercise.kind],
        },
        [...words, element('url', {}, [page])],
      ),
    ]),
  );
}

function text(name: string, said: string) {
  return element(name, {}, [element('langstring', { lang: LANGUAGE }, [said])]);
}
