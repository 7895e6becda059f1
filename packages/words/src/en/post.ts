/** Words of hand-overs and answers that go by way of a coach's box. */
export const post = {
  'post.deskHeading': 'Your box for hand-overs',
  'post.deskAbout':
    'Archers can put their hand-overs into a box of yours instead of sending files. They are sealed with your key, so that only this device can read them; whoever hosts the box can read nothing. What comes in is remembered here until you forget it.',
  'post.yourName': 'What archers call you',
  'post.open': 'Open a box',
  'post.inviteAbout': 'Give this link to your archers, or let them scan the code. There is no secret in it.',
  'post.qr': 'QR code of the invitation below',
  'post.look': 'Look into the box',
  'post.lastRead': 'Last looked into on {day, date, short} at {at, time}.',
  'post.close': 'Close the box and forget its archers',
  'post.closed':
    'The box is closed, and what was remembered of its archers is gone from here. Their own records are theirs, as before.',
  'post.sendAnswer': 'Put the answer into the box',
  'post.answerSent': 'The answer is in the box. {archer} sees it when their app next looks into it.',
  'post.lastAnswer': 'Last answered on {day, date, short} at {at, time}.',
  'post.forget': 'Forget {archer}',
  'post.inviteHeading': 'Hand over to {coach}',
  'post.inviteText':
    '{coach} invites you to hand over by way of a box instead of by files. Nothing goes there by itself: you hand over on the page for files, choose the days, and add notes only if you want to. It is sealed so that only {coach} can read it. You can leave at any time, and what you handed over goes from the box.',
  'post.accept': 'Accept the invitation',
  'post.accepted': 'Accepted. You hand over on the page for files.',
  'post.cut': 'This invitation is cut off or changed. Ask for it again, whole.',
  'post.leave': 'Leave {coach}',
  'post.left': 'Left. What you handed over is out of the box.',
  'post.put': 'Put it into the box of {coach}',
  'post.isPut': 'It is in the box of {coach}.',
  'post.lastPut': 'Last handed over to {coach} on {day, date, short} at {at, time}.',
  'post.answerCame': '{coach} has answered.',
  'post.read': 'Read the answer',
} as const;
