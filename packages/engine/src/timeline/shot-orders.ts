/**
 * Words that can be heard as an order to let the string go, one language a line. `releas*` is the beginning of a word, `_` a space. Some also mean
 * something harmless ("go", French "tire"); at full draw without an arrow the harm decides. It is a second net and not complete: the first is
 * that the archer has read and allowed every line.
 * @source own; the words of judges, coaches and archers, from memory
 */
const ORDER_WORDS = [
  'releas* let_go loose loosed looses loosing loosen* fire fires fired firing shoot* go unhook* trigger* execut* pluck* slip slips slipped',
  'loslassen loslass* lassfliegen schiess* schuss feuer feuern losen ablass* abschuss abschiess* abfeuern',
  'lâche* lâchez lâcher relâche* décoche* tire tirez tirer feu libère* libérer',
  'suelt* soltar dispar* tira tirad tirar fuego',
  'rilasci* lascia lasciala lasciare scocca* spara sparate fuoco molla mollare',
  'solta solte soltar larga* atira* atire fogo',
  'loslaten loslaat lossen schiet* vuur',
  'puść puszczaj puszczaj* strzelaj* strzał zwolnij ognia',
  'släpp* slipp skjut* skyt* skyd* fyr laukaise irti ammu',
  'отпус* отпущ* выпус* пускай стреляй* стрелять огонь выстрел пли',
  'bırak* ateş fırlat*',
  'bắn buông lepas lepaskan tembak',
  'छोड़* मारो',
];

/** Orders looked for anywhere, with their accents: in writing that puts no spaces between words, and German "löse", which is not "lose". */
const ORDER_FRAGMENTS = [
  'löse',
  'loese',
  '放箭',
  '撒放',
  '松手',
  '放手',
  '射',
  '離して',
  '離せ',
  '放て',
  '撃て',
  'リリース',
  '놔',
  '놓아',
  '쏴',
  '발사',
  '슈팅',
  '릴리즈',
  'ปล่อย',
  'ยิง',
];

const HAND = '(fingers?|hand|hook|grip|thumb|string hand|draw hand|digits?)';
const OF_IT = '((the|your|that|this|my|those|its) )*';
/** Orders of several words, over text in plain small letters with single spaces. */
const ORDER_PHRASES = [
  / let( \w+){0,3} (fly|off|away|rip|free|slip|out) /,
  new RegExp(` (open|relax|straighten|uncurl|extend|spread|soften|undo) ${OF_IT}${HAND} `),
  new RegExp(` (drop|dump|free|leave|lose|slip|twang) ${OF_IT}(string|arrow|it) `),
  / (send|launch|fling|punch|shoot) ((the|your|that|this|an) )*(it|one|arrow|shot) /,
  / break ((the|your|that|this) )*shot /,
  / string (away|off|out) /,
  / arrow (away|off|out) /,
  / (lass|lasst|las|laat|na|jetzt|und|also|auf) los /,
  / los( (jetzt|geht|gehts|geht s|nu|nou|maar|weg|ab|auf))* $/,
  / (offne|offnet|mach) (\w+ )?(finger|hand)( auf)? /,
  / finger auf /,
  / (ouvre|ouvrez|ouvrir) (\w+ )?(doigts?|main) /,
  / (laisse|laissez) (\w+ )?(partir|aller|filer) /,
  / vas y /,
  / (abre|abrid|abra|apri|aprite) (\w+ )?(dedos|mano|mao|dita) /,
  / (deja|dejala|dejalo|deixa|lascia) (\w+ )?(ir|andare) /,
];

/** A line that is made of nothing but these is an order by its tone. */
const ORDER_ALONE = new Set(
  'now shot away off open drop send fly out bang jetzt ab weg ya via partez nu teraz давай'.split(' '),
);

/** What is known of orders to let the string go, as written; `checkCall` folds them as it folds a line. */
export const shotOrders = {
  words: ORDER_WORDS.flatMap((line) => line.split(' ')),
  fragments: ORDER_FRAGMENTS,
  phrases: ORDER_PHRASES,
  alone: ORDER_ALONE,
};
