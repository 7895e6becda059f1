/** The season: what is due and why, what a season says, and which parts of it will not happen. */
export const season = {
  'due.weekday': 'Week {week, number} of {weeks, number} in “{block}”.',
  'due.sensible':
    'Two or three mornings a week, never on two days running, as long as no season of your own says otherwise.',
  'due.coach': '{by} wrote this day for you.',
  'due.test': 'A test is due today: {title}. It is done as it is written.',
  'due.testLate': 'The test of {day, date, plain} is still due: {title}. It is done as it is written.',
  'due.lighterWeek': 'A lighter week: {share, number, share} of the reps.',
  'due.taper': '“{title}” is on {day, date, plain}: {share, number, share} of the reps until then.',
  'due.taken': 'You chose this program for today.',
  'due.takenInstead': 'You chose this program for today. The season has {titles}.',
  'due.then': 'After it: {title}',
  'due.doneToo': '{title}: done today.',
  'due.restPain': 'Pain on {day, date, plain}: no drill.',
  'due.restCompetition': '“{title}” is on: no drill.',
  'due.restBefore': '“{title}” is tomorrow: rest today.',
  'due.restDay': 'A rest day until {to, date, plain}.',
  'due.restDayWhy': 'A rest day until {to, date, plain}: {why}.',
  'due.restRow':
    '{days, plural, one {# day} other {# days}} in a row with a bow in the hand: rest today. Never more than six in a row (bow-international.com, “Ask the experts”).',
  'due.restYoung':
    'There was a drill on {day, date, plain}. Under 16 two or three days a week and never two running: rest today (2014 international consensus, Lloyd and others).',
  'due.restNoSession': 'Nothing is planned today. The next drill is on {day, date, long}.',
  'due.restSensible':
    'Nothing is planned today: two or three mornings a week, never on two days running. The next one is {day, date, long}.',
  'due.restNothing': 'Nothing is planned today, nor in the four weeks to come.',
  'due.restCoach': '{by} wrote no drill for today. The next one is on {day, date, long}.',
  'due.restCoachLast': '{by} wrote no drill for today.',
  'due.restMissing':
    'Due today: {titles}. It is not in your rack. Nothing is put in its place: open the program file, or take another program.',
  'due.restOutside': 'Your season says nothing about today. It continues on {day, date, long}.',
  'due.restOver': 'Your season is over. Write the next one, or go back to two or three mornings a week.',
  'notice.blocksOverlap':
    '“{title}” and “{wins}” overlap from {from, date, year} to {to, date, year}. There the one that begins later counts, “{wins}”; they are not added up.',
  'notice.answersOverlap':
    'What {by} wrote overlaps with a later answer, of {wins, date, year}, from {from, date, year} to {to, date, year}. There the later one counts; they are not added up.',
  'notice.testNearCompetition':
    'The test “{title}” on {day, date, year} is on a competition or in the two days before. It waits until after it, for a week at most.',
  'notice.testOnRestDay':
    'The test “{title}” on {day, date, year} is on a rest day. It waits until after it, for a week at most.',
  'notice.notATest': '“{title}” is not a test: it measures nothing. On {day, date, year} it is due as a drill.',
  'notice.everyDay':
    '“{title}” has a session on all seven days. After six days in a row there is a rest day all the same.',
  'notice.sessionOnRestDay':
    'What {by} wrote for {day, date, year} is on a rest day, on a competition or on the day before it. That day stays a rest day.',
  'notice.programMissing':
    'There is no program “{title}” here. Its days are without it until it is opened; nothing is put in its place.',
  'leads.title': 'What today counts for',
  'leads.clean': '{title}: clean, it counts in full. {next}',
  'leads.place': '{title}: today holds the place and does not climb, however clean it is.',
  'leads.fixed': '{title}: no ladder. It stays as it is.',
  'leads.next': '{title}: {next}',
  'next.title': 'What comes after {program}',
  'next.about': 'Outgrown? Nothing changes by itself.',
  'next.take': 'Use {title} today',
} as const;
