/** What the page says where it stands in a learning system. */
export const lms = {
  'lms.strip': 'Learning system',
  'lms.connecting': 'Opening, and asking the learning system where you were…',
  'lms.told': 'Reported to the learning system: done, {score} of 100.',
  'lms.told.passed': 'Reported to the learning system: passed, {score} of 100.',
  'lms.told.failed': 'Reported to the learning system: not passed, {score} of 100.',
  'lms.told.later':
    'Passed, {score} of 100. The learning system takes one judgement each time: it is told when you open this from there again.',
  'lms.return': 'Back to the learning system',
  'lms.only-looking':
    'Opened to look at: nothing you do here is reported or kept by the learning system.',
  'lms.damaged':
    'What the learning system had kept of this work came back damaged. What this device has of it is still here; if you see none of your work, it begins anew.',
  'lms.too-long':
    'This work is longer than the learning system keeps (4096 characters). The outcome is reported as always.',
  'lms.on-device': 'Your work is kept in this browser on this device: come back here to go on.',
  'lms.nowhere':
    'This browser keeps nothing for this page either: finish now, for your work is lost when you leave.',
  'lms.elsewhere':
    'You have begun this on another device or in another browser, and it is too long for the learning system to keep. Go on with it there. Or begin anew here; what is there stays there.',
  'lms.elsewhere.begin': 'Begin anew here',
  'lms.broken': 'This package is damaged',
  'lms.broken.whole':
    'Its file exercise.json is missing or is no exercise of this program. Whoever put it in can make the package anew and put it in again.',
  'lms.broken.at':
    'In its file exercise.json this is not as it should be: {where}. Whoever put it in can make the package anew and put it in again.',
  'lms.trouble.none': 'No learning system answers here. You can go on, and nothing is reported.',
  'lms.trouble.not-begun':
    'The learning system did not let this session begin. You can go on, and nothing is reported. To be counted, close this and open it from the learning system again.',
  'lms.trouble.session-over':
    'The session with the learning system is over. Close this and open it from there again; what is not reported yet will be then.',
  'lms.trouble.not-reached': 'The learning system cannot be reached. Sending is tried again.',
  'lms.trouble.refused': 'The learning system has refused what was sent. Tell whoever runs it.',
  'lms.trouble.detail': '(It said: {detail})',
} as const;
