// What a prescription says, in English: the only place for it, in the Unicode (ICU) message format as far as `fillSentence` knows it.
// `packages/words` has the same keys in every other language.

/** Why today's numbers are what they are: one message for every rule. */
export const reasonSentences = {
  'reason.dose':
    '{sets, plural, one {# set} other {# sets}} of {reps, plural, one {# rep} other {# reps}}, hold {hold, number, seconds}',
  'reason.doseAdded':
    '{sets, plural, one {# set} other {# sets}} of {reps, plural, one {# rep} other {# reps}}, hold {hold, number, seconds}, {weight} added',
  'reason.lessHold': 'hold {from, number, seconds} to {to, number, seconds}',
  'reason.lessReps': 'reps {from, number} to {to, number}',
  'reason.lessSets': 'sets {from, number} to {to, number}',
  'reason.lessWeight': 'added weight {from} to {to}',
  'reason.nextMost': 'More weight would come next, but {most} added is the most.',
  'reason.nextWaits': 'More weight comes next, but not before the two weeks are over.',
  'reason.nextCut': 'The ladder goes on, but only its first {most, number} steps are counted.',
  'reason.nextTop': 'This is the top of its ladder.',
  'reason.next': '{days, plural, one {One more clean day leads} other {# more clean days lead}} on: {change}.',
  'reason.fixed': '{title}: {dose}, as the program says. It has no ladder.',
  'reason.start': '{title}: {dose}, where the program begins. {next}',
  'reason.climb':
    '{title}: {change}, after {days, plural, one {# clean day} other {# clean days}} in a row, the last on {on, date, plain}. {next}',
  'reason.recover':
    '{title}: {change}, after {days, plural, one {# clean day} other {# clean days}}, the last on {on, date, plain}; it goes back up in small steps. {next}',
  'reason.stepDown':
    '{title}: {change}, because too many holds were let down early or skipped on {on, date, plain}. {next}',
  'reason.strain':
    '{title}: {change}, because the effort was nine or ten again and again, the last time on {on, date, plain}. {next}',
  'reason.layoff':
    '{title}: {change}, after {days, plural, one {# day} other {# days}} without a bow or a band. {next}',
  'reason.sore': '{title}: {change}, because there was pain on {on, date, plain}. {next}',
  'reason.firstTest': '{title}: {dose} to begin with, because a test gave {longest, number, seconds}. {next}',
  'reason.firstFailures':
    '{title}: {dose} to begin with, because your longest hold is about {longest, number, seconds}. {next}',
  'reason.firstAnswer':
    '{title}: {dose} to begin with, because you said that you can hold {longest, number, seconds}. {next}',
  'reason.firstHeld':
    '{title}: {dose} to begin with, because you have held {known, number, seconds} in other drills. {next}',
  'reason.firstCautious':
    '{title}: {dose} to begin with, because you have held {known, number, seconds} so far, and nobody knows how much more it can be. A test, or your own word for your longest hold, would tell. {next}',
  'reason.top':
    '{title}: this is the top of its ladder. If it stays easy, take a test, and ask your coach for what comes next.',
  'reason.topNext': '{title}: this is the top of its ladder. If it stays easy, go on with {program}.',
  'reason.stuck':
    '{title}: a hold of {hold, number, seconds} has failed {times, plural, one {# time} other {# times}}. Take a test, or another program with shorter holds; a coach may see what it is.',
  'reason.away':
    '{title}: {change}, after {days, plural, one {# day} other {# days}} without a bow or a band. The shares are ours.',
  'reason.awayOlder':
    '{title}: {change}, after {days, plural, one {# day} other {# days}} without a bow or a band. Over 45 it is lost faster. The shares are ours.',
  'reason.yearAway':
    'After {days, plural, one {# day} other {# days}} away begin with lighter limbs or a stretch band, and without added weight.',
  'reason.wayBack':
    '{title}: {change}, on the way back after pain on {on, date, plain}: {stage, select, mimed {without anything in the hand} band {with a stretch band} light {with a light bow} other {with your own bow}}, until {days, plural, one {# more day} other {# more days}} without pain.',
  'reason.elsewhere':
    '{title}: {change}, because on {on, date, plain} most reps of another drill held {held, number, seconds} of {asked, number, seconds}.',
  'reason.deload':
    '{title}: {cut}, because this is training week {week, number}, and every {every, number} weeks is a lighter one.',
  'reason.taper': '{title}: {cut}, because the competition is on {on, date, plain}: fewer reps, the hold stays.',
  'reason.taperToday': '{title}: {cut}, because the competition is today.',
  'reason.effort': '{title}: {cut}, because the effort last time was {effort, number} of 10.',
  'reason.heavy': '{title}: {cut}, because you said today is heavy.',
  'reason.arrows':
    '{title}: {cut}, because you shot {arrows, number} arrows {day, select, today {today} other {yesterday}}. A rule of thumb: after {many, number} arrows, a little less.',
  'reason.cut': '{reps, plural, one {# rep} other {# reps}} instead of {from, number}',
  'reason.cutLeast': '{reps, plural, one {# rep} other {# reps}}, the least there is',
  'reason.afterPain':
    '{title}: {change}, after pain on {on, date, plain}: hold and time grow by a fifth at most, or by a second and a rep, over what you have done since. The step is ours.',
  'reason.cap':
    '{title}: {change}. While something eases, nothing rises above the most of the last {drills, plural, one {drill} other {# drills}}.',
  'reason.pace':
    '{title}: {sets, number} × {reps, number} instead of {fromSets, number} × {fromReps, number}, so that the time at full draw grows by a fifth at most from one drill to the next; up to where the program begins it may be three times as much. This limit is ours.',
  'reason.weeklyGrowth':
    '{title}: {sets, number} × {reps, number} instead of {fromSets, number} × {fromReps, number}, so that these seven days hold at most {growth, number, ratio} times the {mean, number, seconds} of the last training weeks; {done, number, seconds} are done. This is a habit, not a proven protection: Buist and others found no fewer injuries with such a limit in 2008.',
  'reason.weeklyGrowthLeast':
    '{title}: {sets, number} × {reps, number}, the least there is, so that these seven days hold at most {growth, number, ratio} times the {mean, number, seconds} of the last training weeks; {done, number, seconds} are done. This is a habit, not a proven protection: Buist and others found no fewer injuries with such a limit in 2008.',
  'reason.weightWaits':
    '{title}: {weight} added, not {wished} yet. Weight waits for the first two weeks to pass, and rises by {step} every two weeks at most, over all programs.',
  'reason.weightMost':
    "{title}: {weight} added, not {wished}. The most is {most}, {limit} or a fifth of the bow, unless a coach's file says more.",
  'reason.ageChild': 'Under 12: take a stretch band, not a bow.',
  'reason.ageYouth': 'From 12 to 15: take a light bow, not your own full weight.',
  'reason.ageWeight': '{title}: no added weight under 16, instead of {weight}.',
  'reason.ageDoseChild':
    '{title}: {change}. Under 12 no more than the club starter: 5 holds of 5 s. The number is ours.',
  'reason.ageDoseYouth': "{title}: {change}. From 12 to 15 at most half of an adult's first drill. The number is ours.",
  'reason.minutes':
    "In {minutes, plural, one {# minute} other {# minutes}} there is room for {share, number, share} of today's time at full draw. {counts}",
  'reason.minutesOver':
    "In {minutes, plural, one {# minute} other {# minutes}} there is room for {share, number, share} of today's time at full draw. Even one rep takes longer than that. {counts}",
  'reason.halfHour':
    'Unless you give it more, a drill grows to {minutes, plural, one {# minute} other {# minutes}}: that leaves {share, number, share} of the time at full draw that its ladder asks for. {counts}',
  'reason.countsFull': 'Clean, it counts in full.',
  'reason.countsPlace': 'Too short to count: it holds the place and does not climb.',
  'reason.shorterOut': '{title}: left out, to fit the minutes.',
  'reason.shorterHold': '{title}: cut to one hold of {hold, number, seconds}, to fit the minutes.',
  'reason.shorter':
    '{title}: {sets, number} × {reps, number} instead of {fromSets, number} × {fromReps, number}, to fit the minutes.',
  'reason.seen':
    '{title}: on {on, date, plain} the camera saw {seen, number, seconds} at full draw in {reps, plural, one {# rep} other {# reps}} that the clock has as {clock, number, seconds}. The numbers go by what was seen.',
  'reason.holdsPlace': '{title}: today holds the place and does not climb, however clean it is.',
  'reason.small': '{title}: the last drill was too short to count. It holds the place and does not climb.',
  'reason.restLess':
    '{title}: {sets, number} × {reps, number}, hold {hold, number, seconds}, is the most if you drill all the same.',
  'reason.clicker': '{title} is left out: it needs a clicker.',
  'reason.impossibleDate':
    '{records, plural, one {# record was} other {# records were}} left out: there is no such day as {dates}. Correct the date in the journal.',
  'reason.future':
    "{records, plural, one {# record dated after today was} other {# records dated after today were}} left out. Check the device's date.",
  'reason.test': '{title} is a test: it is done as it is written, and never eased or cut. Stop when the form goes.',
  'reason.pain':
    'Pain on {on, date, plain}: no drill today. Pain is pain in a joint or a sharp pain, not tired muscles. If it stays, see a doctor or a physiotherapist.',
  'reason.painAgain':
    '{drills, plural, one {# painful drill} other {# painful drills}} within two weeks, the last on {on, date, plain}: no drill before {until, date, plain}. See a doctor or a physiotherapist first.',
  'reason.painMimed':
    'There was pain on {on, date, plain}. Today is a rest day: go through the shot with nothing in your hands, and answer whether it hurts. {days, plural, one {# more day} other {# more days}} without pain, and it goes on with a stretch band.',
  'reason.painTool':
    'The way back after pain on {on, date, plain} goes on {stage, select, mimed {without anything in the hand} band {with a stretch band} light {with a light bow} other {with your own bow}}, which your kit does not have: rest, and answer whether it hurts. {days, plural, one {# more day} other {# more days}} without pain to the next stage.',
  'reason.daysInRow':
    '{days, plural, one {# day} other {# days}} in a row with a bow in the hand: rest today. Never more than {most, number} in a row (bow-international.com, “Ask the experts”).',
  'reason.youthDay':
    'There was a drill on {on, date, plain}. From 8 to 15, two or three days a week and never two running: rest today (2014 international consensus, Lloyd and others).',
  'reason.competitionToday': 'The competition is today: no drill.',
  'reason.competitionTomorrow': 'The competition is tomorrow: rest today.',
  'reason.seasonRest': "Your season has no drill today. If you drill all the same, do at most half of a day's drill.",
  'reason.seasonRestUntil':
    "Your season has no drill today; the next one is on {on, date, plain}. If you drill all the same, do at most half of a day's drill.",
  'reason.noClicker': '{title} needs a clicker, and your bow has none. Choose another program.',
  'reason.testPain': '{title} waits: no test on the way back after pain on {on, date, plain}.',
  'reason.testCompetition':
    '{title} waits: no test in the two days before a competition, which is on {on, date, plain}.',
  'reason.testAge': '{title} goes on until the form fails: under 16 only with a coach, not from here.',
  'reason.testMinutes':
    '{title} takes {needed, plural, one {# minute} other {# minutes}} and is never cut: {minutes, plural, one {# minute is} other {# minutes are}} too few.',
  'reason.lighterWeek': '{title}: {cut}, because week {week, number} of {weeks, number} in “{block}” is a lighter one.',
  'reason.steady': '{title}: {dose}, unchanged since {on, date, plain}. {next}',
} as const;

/** What to take care of. */
export const cautionSentences = {
  'caution.painOn':
    'There was pain on {on, date, plain}. Stop today if it comes again, and see a doctor or a physiotherapist if it stays. Pain is pain in a joint or a sharp pain, not tired muscles.',
  'caution.lighterTool':
    '{days, plural, one {# day} other {# days}} without a bow or a band: begin with lighter limbs or a stretch band, and without added weight.',
  'caution.youngChild': 'Under 12: a stretch band only, with a coach or another adult beside you.',
  'caution.young': 'Under 16: a light bow, no added weight, and a coach who knows the plan.',
  'caution.compound':
    'A compound bow pulls hard as it is let down, and this drill lets down often. Keep both elbows high, let down slowly, and have a coach watch you first.',
  'caution.dryFire': 'Never let go of a drawn string with no arrow on it. Let down slowly, every time.',
  'caution.band': 'Check the band for cracks, anchor it well, and keep it out of line with your eyes.',
  'caution.flexible': 'An arrow is on the string: stand close to a safe backstop, with nobody near the line of flight.',
  'caution.structural': 'Learn this drill from a qualified coach before you do it alone.',
  'caution.opposite': 'The opposite hand is weaker: take a lighter bow or a band.',
  'caution.stopOnPain': 'Warm up first. Stop on pain; if it stays, see a doctor or a physiotherapist.',
  'caution.coachFirst': "A qualified coach's word, club rules and local rules come before this plan.",
} as const;

/** Why one number is what it is. */
export const whySentences = {
  'why.sets': 'Sets: {value}.',
  'why.reps': 'Reps: {value}.',
  'why.draw': 'Draw: {value}.',
  'why.hold': 'Hold: {value}.',
  'why.letDown': 'Let-down: {value}.',
  'why.rest': 'Rest between reps: {value}.',
  'why.setRest': 'Rest after a set: {value}.',
  'why.addedWeight': 'Added weight: {value}.',
  'why.duration': 'Length: {value}.',
  'why.leftOut': 'Left out today.',
  'why.asProgram': 'As the program says.',
  'why.restAsReps': 'The program gives none, so it is the rest between reps.',
  'why.restTimes': '{times, number} times a hold of {hold, number, seconds}: a shorter hold does not shorten the rest.',
  'why.restLonger': '{times, number} times as long, because holds failed again and again.',
  'why.fixed': 'The program says {value}. It has no ladder.',
  'why.begins': 'The program begins with {value}.',
  'why.step': 'The program begins with {start}; step {level, number} of {top, number} on its ladder is {value}.',
  'why.getReady': '{ms, number, duration} to get ready.',
  'why.blockTakes':
    '{title}: {sets, plural, one {# set} other {# sets}} of {reps, plural, one {# rep} other {# reps}}, {ms, number, duration}.',
  'why.between': 'Rest between blocks: {ms, number, duration}.',
} as const;
