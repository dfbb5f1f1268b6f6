// Bandwright. SPDX-License-Identifier: Apache-2.0

// The words of the ring language. Nothing is decided here that needs more than a glance at the text: which line ends
// matter is decided after this step, and most words are special only where the parser expects them.

lexer grammar BandLexer;

// --- Words that open a statement; reserved ---

TITLE           : 'title';
PROFILE         : 'profile';
BAND            : 'band';
CUT             : 'cut';
STONE_ROW       : 'stone-row';
PRONGS          : 'prongs';
METAL           : 'metal';
STONE_MATERIAL  : 'stone-material';
FORGET          : 'forget';
SHOW            : 'show';
VIEW            : 'view';
VARY            : 'vary';
WHAT_IF         : 'what-if';
OPTION          : 'option';
FIND            : 'find';
MEASURED        : 'measured';
EXPLAIN         : 'explain';
REQUIRE         : 'require';
LIMIT           : 'limit';
QUOTE           : 'quote';
EXPORT          : 'export';
SHEET           : 'sheet';

// --- Small words of the grammar; reserved ---

AND             : 'and';
OR              : 'or';
NOT             : 'not';
IF              : 'if';
THEN            : 'then';
ELSE            : 'else';
BETWEEN         : 'between';
BECAUSE         : 'because';
FROM            : 'from';
FOR             : 'for';
ON              : 'on';
IN              : 'in';
AT              : 'at';
TO              : 'to';
OVER            : 'over';
OF              : 'of';
BY              : 'by';
WITH            : 'with';
THROUGH         : 'through';
TRUE            : 'true';
FALSE           : 'false';
RING            : 'ring';

// --- Size systems and units; reserved ---

SYSTEM          : 'US' | 'UK' | 'ISO' | 'JP' | 'CH' | 'DE';
UNIT            : '%' | '°' | UNIT_WORD ('^' DIGITS | [²³])?;

// --- Words that are special only where they are expected; see the rule "name" of the parser ---

// Finger and band
FINGER          : 'finger';
ALLOW           : 'allow';

// Outlines
OUTLINE         : 'outline';
START           : 'start';
LINE            : 'line';
ARC             : 'arc';

// Cuts
WIDTH           : 'width';
DEPTH           : 'depth';
ACROSS          : 'across';
AROUND          : 'around';
FULL            : 'full';
CENTRED         : 'centred';
ENDS            : 'ends';
SQUARE          : 'square';
ROUND           : 'round';
KEEP            : 'keep';
FIT             : 'fit';
LET_IN          : 'let-in';
FINGERTIP       : 'fingertip';
HAND            : 'hand';
LEAVING         : 'leaving';
HALVES          : 'halves';
CAST            : 'cast';
JOINED          : 'joined';
SOLDER          : 'solder';
WELD            : 'weld';
PRESS           : 'press';
MADE            : 'made';
BENCH           : 'bench';
PATTERN         : 'pattern';
INSIDE          : 'inside';

// Seats
HOLE            : 'hole';
BEARING         : 'bearing';
CLEARANCE       : 'clearance';
DEBURR          : 'deburr';
CHANNEL         : 'channel';
NOTCH           : 'notch';
LIP             : 'lip';
FLOOR           : 'floor';
BARS            : 'bars';
EVERY           : 'every';

// Rows and prongs
STONE           : 'stone';
COUNT           : 'count';
SPACING         : 'spacing';
LEAST           : 'least';
SINK            : 'sink';
STAGGERED       : 'staggered';
UPRIGHT         : 'upright';
GIRDLE          : 'girdle';
WITHIN          : 'within';
DIAMETER        : 'diameter';
RISE            : 'rise';
ROOT            : 'root';
REACH           : 'reach';
PER_GAP         : 'per-gap';
SET_HEIGHT      : 'set-height';

// Metals and materials
DENSITY         : 'density';

// Questions
SET             : 'set';
SECTION         : 'section';
VIEWS           : 'views';
LAYOUT          : 'layout';
WEIGHTS         : 'weights';
ALL             : 'all';
METALS          : 'metals';
STONES          : 'stones';
CHECKS          : 'checks';
DECISIONS       : 'decisions';
BLANK           : 'blank';
BUTTON          : 'button';
CASTING         : 'casting';
STEPS           : 'steps';
OPTIONS         : 'options';
FINGERPRINT     : 'fingerprint';
SIZE            : 'size';
TOP             : 'top';
FRONT           : 'front';
SIDE            : 'side';
THREE_QUARTER   : 'three-quarter';
STEP            : 'step';
LARGEST         : 'largest';
SMALLEST        : 'smallest';

// Offers and files
LABOUR          : 'labour';
LOSS            : 'loss';
FINISHING       : 'finishing';
SETTING         : 'setting';
SPARES          : 'spares';
TAX             : 'tax';
VALID           : 'valid';
PARTS           : 'parts';
AS              : 'as';
FINISHED        : 'finished';
ASSEMBLED       : 'assembled';
LAID            : 'laid';
REPLACE         : 'replace';
PAPER           : 'paper';
SHRINKAGE       : 'shrinkage';
OUT             : 'out';
STOCK           : 'stock';
OUTSIDE         : 'outside';

// --- Names, numbers, texts ---

NAME            : WORD ('-' WORD_PART+)*;
NUMBER          : DIGITS ('.' DIGITS)? | FRACTION | DIGITS SPACE_MARK+ FRACTION | DIGITS SPACE_MARK* VULGAR | VULGAR;
STRING          : QUOTE_MARK TEXT_MARK* QUOTE_MARK;

// --- Operators and brackets, in plain and in pasted spelling ---

EQ              : '=';
NE              : '<>' | '≠';
LE              : '<=' | '≤';
GE              : '>=' | '≥';
LT              : '<';
GT              : '>';
PLUS            : '+';
MINUS           : '-' | '−';
STAR            : '*' | '×';
SLASH           : '/';
CARET           : '^';
SUPERSCRIPT     : [²³];
COMMA           : ',';
COLON           : ':';
LPAREN          : '(';
RPAREN          : ')';
LBRACE          : '{';
RBRACE          : '}';

// --- Line ends, and what is passed over ---

NEWLINE         : '\r'? '\n' | '\r';
SPACE           : SPACE_MARK+ -> skip;
COMMENT         : '#' ~[\r\n]* -> channel(HIDDEN);

// --- Slips: read as one word each, so that each gets its own message ---

COMMA_NUMBER    : DIGITS ',' DIGITS;                        // 1,3 mm
HYPHEN_NUMBER   : DIGITS '-' (FRACTION | VULGAR);           // 7-1/2
LETTER_FRACTION : [A-Z] FRACTION;                           // N1/2
GLUED_MINUS     : WORD ('-' WORD_PART+)* '-' DIGITS '.' DIGITS; // breadth-0.5 mm
EXPONENT_NUMBER : DIGITS ('.' DIGITS)? [eE] [+-]? DIGITS;   // 1e3
LEADING_POINT   : '.' DIGITS;                               // .5
TRAILING_POINT  : DIGITS '.';                               // 5.
FRACTION_POINT  : FRACTION '.' DIGITS;                      // 1/2.5
FOREIGN_SIGN    : '==' | '!=' | '&&' | '||' | '**';
OPEN_STRING     : QUOTE_MARK TEXT_MARK*;
UNKNOWN         : .;

// --- Pieces ---

fragment UNIT_WORD  : 'mm' | 'cm' | 'inch' | 'um' | [µμ] 'm' | 'deg' | 'g' | 'kg' | 'dwt' | 'ozt' | 'ct' | 'pt';
fragment WORD       : LETTER WORD_PART*;
fragment WORD_PART  : LETTER | [\p{M}] | [0-9];
fragment LETTER     : [\p{L}];
fragment DIGITS     : [0-9]+;
fragment FRACTION   : DIGITS '/' DIGITS;
fragment VULGAR     : [½¼¾];
fragment QUOTE_MARK    : ["“”„];
fragment TEXT_MARK  : ~["“”„\r\n];
fragment SPACE_MARK : [ \t\f\u000B\uFEFF\p{Zs}];
