/** The page "what is known of me": the archer as the journal tells it, each thing with where it was read. */
export const known = {
  'known.title': 'What is known of you',
  'known.short': 'Longest hold, pain, rhythm, tests',
  'known.about':
    'Read from everything in your journal, whatever the program, and from your kit. Nothing of it is stored: correct a drill or a day, and this page and your next drill follow.',
  'known.from': 'Read from',
  'known.fromNothing': 'Read from nothing yet.',
  'known.more': '{n, plural, one {and # more} other {and # more}}',
  'known.capacity': 'How long you can hold',
  'known.capacityAbout':
    'One hold, from fresh. Each tool is its own. Let-downs for form and full holds say “at least”; only strength that gave out gives a number.',
  'known.nothingHeld': 'Nothing is known yet. Your first drills will tell, or say it yourself below.',
  'known.tool': '{tool, select, bow {Your bow} light {A light bow} band {A stretch band} strap {A strap} other {}}',
  'known.toolAt':
    '{tool, select, bow {Your bow} light {A light bow} band {A stretch band} strap {A strap} other {}}, {weight} on the fingers',
  'known.atLeast': 'At least {ms, number, seconds}: that is what was held.',
  'known.likelyTest': 'About {ms, number, seconds}, as your tests say.',
  'known.likelyFailures': 'About {ms, number, seconds}: there the strength gave out.',
  'known.likelyAnswer': 'About {ms, number, seconds}, as you said.',
  'known.atMost': 'More than {ms, number, seconds} would be news.',
  'known.yourHold': 'Your longest hold, as you know it, seconds',
  'known.yourHoldAbout':
    'One hold of your own bow with good form. New programs begin by it. Leave it empty to let the drills tell.',
  'known.holdRange': 'Seconds from {least, number} to {most, number}.',
  'known.weight': 'Weight on the fingers, age and bow',
  'known.exposure': 'What you have done',
  'known.never': 'No bow and no band was drawn yet.',
  'known.lastDrawn': 'Last drawn on {day, date, long}, {days, plural, =0 {today} one {yesterday} other {# days ago}}.',
  'known.inRow': '{days, plural, one {# day} other {# days}} in a row with something drawn; six at most.',
  'known.sevenDays':
    'These seven days: {held, number, duration} at full draw in {drills, plural, one {# drill} other {# drills}}, {arrows, plural, one {# arrow} other {# arrows}}.',
  'known.weeksBefore': 'Before that, seven days at a time, the latest first: {list} at full draw.',
  'known.added': 'Added weight: {weight}, raised on {day, date, year}.',
  'known.pain': 'Pain',
  'known.painUnknown': 'You were never asked, or never answered. Not answered is not “none”.',
  'known.painClear': 'None, as far as you said.',
  'known.painToday': 'Pain today: no drill.',
  'known.painStage':
    'On the way back after pain on {day, date, plain}: {stage, select, mimed {rest days, the shot gone through with nothing in the hand} band {a stretch band} light {a light bow} other {your own bow}}. {answers, number} of {needed, number} pain-free days here.',
  'known.painUntil':
    'No drill before {day, date, plain}: too many drills hurt within two weeks. See a doctor or a physiotherapist first.',
  'known.painAsk': 'Any pain today?',
  'known.rhythm': 'Your rhythm',
  'known.noRhythm': 'No drill in the last four weeks.',
  'known.days': '{days, number, tenths} days a week, over the last four weeks.',
  'known.minutes': 'A drill usually takes {minutes, plural, one {# minute} other {# minutes}}.',
  'known.usualMinutes': 'Minutes that you usually have',
  'known.usualMinutesAbout':
    'Which program a season without set-up begins with follows it. Leave it empty to let the drills tell.',
  'known.tests': 'Tests',
  'known.noTests': 'No test was done. One is worth taking every four to eight weeks.',
  'known.testSeconds': '{ms, number, seconds}',
  'known.testSecondsMore': '{ms, number, seconds} or more',
  'known.testRep': 'form lasted to rep {rep, number}',
  'known.testRepMore': 'form lasted through rep {rep, number}, the last',
  'known.changeNews':
    '{share, number, share} {direction, select, more {more} other {less}} than on {day, date, plain}: a real change.',
  'known.changeNoise':
    '{share, number, share} {direction, select, more {more} other {less}} than on {day, date, plain}: within the noise of such a test.',
  'known.changeNone': 'The same as on {day, date, plain}.',
  'known.takeTest': 'Use {title} today',
  'known.response': 'How you respond',
  'known.responseUnknown': 'Too few drills of one program to say.',
  'known.responseUp': 'Your holds go up.',
  'known.responseLevel': 'Your holds stay level.',
  'known.responseStuck': 'Stuck: the same holds are missed again and again.',
  'known.responseSliding': 'Sliding: holds get shorter, because they are missed.',
  'known.correctRecords': 'Is a drill wrong? Open it and correct its reps.',
  'known.climb': 'Your climb',
  'known.climbAbout':
    'Each stroke is a week: as tall as its longest full hold, as wide as its time at full draw. Hollow ones are to come, if every drill goes clean.',
  'known.climbWords':
    '{past, plural, one {# week} other {# weeks}} behind, {ahead, plural, one {# week} other {# weeks}} ahead.',
  'known.climbSentence':
    'From {first, number, seconds} in the week of {firstDay, date, plain} to {now, number, seconds} now; {ahead, number, seconds} in the week of {aheadDay, date, plain} if every drill goes clean.',
  'known.climbFrom':
    'From {first, number, seconds} in the week of {firstDay, date, plain} to {now, number, seconds} now.',
  'known.climbAhead': 'If every drill goes clean: {ahead, number, seconds} in the week of {aheadDay, date, plain}.',
  'known.climbTable': 'The same as a table',
  'known.week': 'Week of',
  'known.longest': 'Longest hold',
  'known.held': 'At full draw',
  'known.now': 'this week',
  'known.ahead': 'to come',
  'known.none': 'none',
} as const;
