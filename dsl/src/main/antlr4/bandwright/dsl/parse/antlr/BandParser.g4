// Bandwright. SPDX-License-Identifier: Apache-2.0

// The order of the words. One statement is read at a time: the text is cut into statements before (see
// StatementCutter), so that a slip in one never hides another. Line ends reach this grammar only where they matter:
// between what is asked for in the braces of vary, what-if and option.

parser grammar BandParser;

options { tokenVocab = BandLexer; }

// --- One statement ---

single
    : statement EOF
    ;

statement
    : TITLE text=STRING because?                                                      # title
    | name EQ value=amount range because?                                             # handle
    | name EQ value=expression because?                                               # definition
    | PROFILE name EQ shape because?                                                  # profile
    | BAND name LBRACE bandProperty* RBRACE because?                                  # band
    | CUT name FROM names LBRACE grooveProperty* RBRACE because?                      # groove
    | CUT cut=name FOR row=name FROM names LBRACE seatsProperty* RBRACE because?      # seats
    | STONE_ROW row=name ON body=name LBRACE rowProperty* RBRACE because?             # stoneRow
    | PRONGS pins=name FOR row=name ON body=name LBRACE prongsProperty* RBRACE because? # prongs
    | METAL name LBRACE metalProperty* RBRACE because?                                # metalDefinition
    | STONE_MATERIAL name LBRACE materialProperty* RBRACE because?                    # stoneMaterial
    | FORGET name                                                                     # forget
    | SHOW subject (AS state=(SET | CAST))? (FROM viewpoint)?                         # show
    | VIEW parts                                                                      # view
    | VARY axis (COMMA axis)* asked?                                                  # vary
    | WHAT_IF change (COMMA change)* asked?                                           # whatIf
    | OPTION text=STRING differences because?                                         # option
    | FIND extreme=(LARGEST | SMALLEST) name WITH expression                          # find
    | MEASURED measure=amount EQ value=amount because?                                # measured
    | EXPLAIN expression                                                              # explain
    | REQUIRE expression because?                                                     # require
    | LIMIT key=name value=amount because?                                            # limit
    | QUOTE LBRACE quoteProperty* RBRACE because?                                     # quote
    | EXPORT file=STRING (LBRACE exportProperty* RBRACE)?                             # export
    | SHEET file=STRING (LBRACE sheetProperty* RBRACE)?                               # sheet
    | expression                                                                      # bare
    ;

because
    : BECAUSE reason=STRING
    ;

range
    : BETWEEN low=amount AND high=amount (STEP step=amount)?
    ;

// --- Profiles ---

shape
    : OUTLINE LBRACE START start=point segment* RBRACE                                # outline
    | form=name LPAREN (argument (COMMA argument)*)? RPAREN                           # form
    ;

segment
    : LINE TO to=point                                                                # line
    | ARC THROUGH through=point TO to=point                                           # arc
    ;

point
    : LPAREN across=amount COMMA out=amount RPAREN
    ;

// --- Bands, metals, stone materials ---

bandProperty
    : FINGER size=amount (ALLOW more=amount SYSTEM?)?                            # finger
    | PROFILE station (COMMA station)*                                                # profiles
    | METAL name                                                                      # metalChoice
    ;

station
    : name (AT amount)?
    ;

metalProperty
    : word=DENSITY amount                                                             # metalAmount
    | name amount                                                                     # share
    ;

materialProperty
    : word=DENSITY amount
    ;

// --- Cuts ---

grooveProperty
    : DEPTH THROUGH                                                                   # depthThrough
    | word=(WIDTH | DEPTH | ACROSS | FIT) amount                                      # grooveAmount
    | PROFILE name                                                                    # floorProfile
    | around                                                                          # grooveAround
    | ENDS ending=(SQUARE | ROUND)                                                    # ending
    | KEEP kept=name IN metal=name                                                    # keep
    | LET_IN FROM side=(FINGERTIP | HAND) LEAVING name                                # letInFrom
    | LET_IN IN HALVES AT amount                                                      # letInHalves
    | LET_IN CAST                                                                     # letInCast
    | JOINED BY joint=(SOLDER | WELD | PRESS)                                         # joined
    | LEAVING names                                                                   # leaving
    | made                                                                            # grooveMade
    | INSIDE                                                                          # inside
    ;

seatsProperty
    : word=(HOLE | BEARING | CLEARANCE) amount                                        # seatsAmount
    | DEBURR amount?                                                                  # deburr
    | CHANNEL LBRACE channelProperty* RBRACE                                          # channel
    | made                                                                            # seatsMade
    ;

channelProperty
    : word=(WIDTH | NOTCH | LIP | FLOOR) amount                                       # channelAmount
    | BARS EVERY amount                                                               # bars
    ;

around
    : AROUND (FULL | arc=amount (CENTRED centred=amount)?)
    ;

made
    : MADE (AT BENCH | IN PATTERN)
    ;

// --- Stones and what holds them ---

rowProperty
    : STONE cut=name material=name size=amount (BY by=amount)? (WITHIN within=amount)? # stone
    | around                                                                          # rowAround
    | word=(COUNT | SINK | GIRDLE | DEPTH) amount                                     # rowAmount
    | SPACING (AT LEAST)? amount                                                      # spacing
    | ACROSS amount (COMMA amount)*                                                   # rowAcross
    | STAGGERED                                                                       # staggered
    | UPRIGHT                                                                         # upright
    ;

prongsProperty
    : word=(DIAMETER | RISE | ROOT | ACROSS | REACH | PER_GAP | SET_HEIGHT) amount
    ;

// --- Questions ---

subject
    : RING                                                                            # ringSubject
    | part COMMA part (COMMA part)*                                                   # partsSubject
    | SECTION (OF parts)? (AT? at=amount)?                                            # section
    | LAYOUT OF name                                                                  # layout
    | VIEWS (OF parts)?                                                               # views
    | WEIGHTS (IN ALL METALS)?                                                        # weights
    | CASTING (LBRACE castingProperty* RBRACE)?                                       # casting
    | topic=(STONES | CHECKS | DECISIONS | BLANK | STEPS | OPTIONS | FINGERPRINT | SIZE) # topic
    | expression                                                                      # valueSubject
    ;

viewpoint
    : side=(TOP | FRONT | SIDE | THREE_QUARTER)
    | amount
    ;

axis
    : name FROM start=amount TO end=amount (STEP step=amount)?                        # stretch
    | name OVER amount (COMMA amount)*                                                # values
    | name                                                                            # ownRange
    ;

change
    : name EQ value=expression
    ;

asked
    : LBRACE separator* (askedItem (separator+ askedItem)*)? separator* RBRACE
    ;

askedItem
    : difference                                                                      # askedDefinition
    | expression                                                                      # askedValue
    ;

differences
    : LBRACE separator* (difference (separator+ difference)*)? separator* RBRACE
    ;

difference
    : name EQ value=amount range because?                                             # handleDifference
    | name EQ value=expression because?                                               # plainDifference
    ;

separator
    : COMMA | NEWLINE
    ;

// --- Offers and files ---

quoteProperty
    : word=(METAL | STONES) price=amount                                              # price
    | word=(METAL | STONES) of=name price=amount                                      # price
    | LABOUR text=STRING? price=amount                                                # labour
    | word=(LOSS | FINISHING | SETTING | SPARES) amount                               # quoteAmount
    | TAX text=STRING? rate=amount                                                    # tax
    | VALID text=STRING                                                               # valid
    ;

exportProperty
    : PARTS parts                                                                     # exportParts
    | patternProperty                                                                 # exportPattern
    | AS stage=(CAST | FINISHED)                                                      # exportStage
    | ASSEMBLED                                                                       # exportAssembled
    | LAID OUT (SPACING amount)?                                                      # exportLaidOut
    | REPLACE                                                                         # exportReplace
    | held                                                                            # exportHeld
    ;

// What a drawing or a table is of; what is asked with a word of its own is asked here in the same words.
held
    : SECTION (OF parts)? (AT at=amount)?                                             # heldSection
    | LAYOUT OF name                                                                  # heldLayout
    | VIEWS (OF parts)?                                                               # heldViews
    | WEIGHTS (IN ALL METALS)?                                                        # heldWeights
    | CASTING                                                                         # heldCasting
    | topic=(STONES | DECISIONS | BLANK | STEPS | OPTIONS | SIZE)                     # heldTopic
    | VARY axis (COMMA axis)* asked?                                                  # heldVary
    | WHAT_IF change (COMMA change)* asked?                                           # heldWhatIf
    | QUOTE LBRACE quoteProperty* RBRACE                                              # heldQuote
    ;

sheetProperty
    : PAPER name                                                                      # sheetPaper
    | METALS names                                                                    # sheetMetals
    | word=SPARES amount                                                              # sheetSpares
    | patternProperty                                                                 # sheetPattern
    | REPLACE                                                                         # sheetReplace
    ;

castingProperty
    : patternProperty                                                                 # castingPattern
    | word=(BUTTON | PATTERN) amount                                                  # castingAmount
    ;

patternProperty
    : SHRINKAGE AROUND inAround=amount ACROSS inAcross=amount OUT inOut=amount        # directedShrinkage
    | SHRINKAGE amount                                                                # shrinkage
    | STOCK allowance (COMMA allowance)?                                              # stock
    ;

allowance
    : amount side=(OUTSIDE | INSIDE)
    ;

// --- Values: what is true, what is compared, what is calculated ---

expression
    : comparison                                                                      # plain
    | NOT expression                                                                  # negation
    | left=expression AND right=expression                                            # conjunction
    | left=expression OR right=expression                                             # disjunction
    | IF condition=expression THEN whenTrue=expression ELSE whenFalse=expression      # conditional
    ;

comparison
    : first=amount link+ (WITHIN within=amount)?                                      # chain
    | value=amount BETWEEN low=amount AND high=amount                                 # between
    | amount                                                                          # alone
    ;

link
    : operator=(EQ | NE | LT | LE | GT | GE) amount
    ;

amount
    : base=amount SUPERSCRIPT                                                         # superscript
    | <assoc=right> base=amount CARET exponent=amount                                 # power
    | operator=(PLUS | MINUS) amount                                                  # sign
    | left=amount operator=(STAR | SLASH) right=amount                                # product
    | left=amount operator=(PLUS | MINUS) right=amount                                # sum
    | amount IN (unit | SYSTEM | currency=NAME)                                       # shownIn
    | NUMBER unit?                                                                    # number
    | SYSTEM NUMBER                                                                   # numberedSize
    | SYSTEM letter=name NUMBER?                                                      # letteredSize
    | STRING                                                                          # string
    | truth=(TRUE | FALSE)                                                            # truth
    | function=name LPAREN (argument (COMMA argument)*)? RPAREN                       # call
    | part                                                                            # reference
    | LPAREN expression RPAREN                                                        # group
    ;

argument
    : (name COLON)? expression
    ;

unit
    : UNIT (SLASH UNIT)*
    ;

// --- Names ---

names
    : name (COMMA name)*
    ;

parts
    : part (COMMA part)*
    ;

part
    : name
    | RING
    ;

name
    : NAME | FINGER | ALLOW | OUTLINE | START | LINE | ARC | WIDTH | DEPTH | ACROSS | AROUND | FULL | CENTRED
    | ENDS | SQUARE | ROUND | KEEP | FIT | LET_IN | FINGERTIP | HAND | LEAVING | HALVES | CAST | JOINED
    | SOLDER | WELD | PRESS | MADE | BENCH | PATTERN | INSIDE | HOLE | BEARING | CLEARANCE | DEBURR | CHANNEL
    | NOTCH | LIP | FLOOR | BARS | EVERY | STONE | COUNT | SPACING | LEAST | SINK | STAGGERED | UPRIGHT
    | GIRDLE | WITHIN | DIAMETER | RISE | ROOT | REACH | PER_GAP | SET_HEIGHT | DENSITY | SET | SECTION | VIEWS | LAYOUT
    | WEIGHTS | ALL | METALS | STONES | CHECKS | DECISIONS | BLANK | STEPS | OPTIONS | FINGERPRINT | SIZE
    | TOP | FRONT | SIDE | THREE_QUARTER | STEP | LARGEST | SMALLEST | LABOUR | LOSS | FINISHING | SETTING | SPARES
    | TAX | VALID | CASTING | BUTTON | PARTS | AS | FINISHED | ASSEMBLED | LAID | REPLACE | SHRINKAGE | OUT | STOCK
    | OUTSIDE | PAPER
    ;
