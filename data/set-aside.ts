/**
 * What is not worked out: danger, which gets the first thing to do, and what is declined in one sentence with the safer way.
 * The first row that fits a message decides, so whoever is hurt comes before whatever hurt them.
 *
 * Words and phrases are separated by commas; plurals and one slip of the finger in a word of six letters or more are known.
 * `any` is enough by itself; of `together` one of each line stands close to one of the others, of `inOrder` one after another;
 * with an `unless` in the message the row is passed over.
 */
export interface SetAside {
  readonly about: string;
  /** `first`: what to do now. `advice`: a short answer. Both are no refusals, as `declined` is. */
  readonly kind: 'first' | 'declined' | 'advice';
  readonly any?: string;
  readonly together?: readonly (readonly string[])[];
  readonly inOrder?: readonly (readonly string[])[];
  readonly unless?: string;
  /** Passed over where the message has a number: it is more likely a question of ours. */
  readonly wordsOnly?: true;
  readonly says: string;
}

const BODY = 'hand, finger, arm, skin, eye, lips, leg';
const MY_BODY = `my hand, my finger, my arm, my skin, my eye, my chest, my lips, my face, my foot, my leg, my throat, my mouth`;
const INJURED = 'numb, swollen, swelling, painful, bleeding, sting, itching, itchy, blister, rash';
const HURTS = `hurt, burn, burning, burned, pain, itch, ${INJURED}`;
/** Who eats what lies about. */
const SMALL = 'kid, child, son, daughter, baby, toddler, dog, cat';

const PLUGGED = `plug, socket, outlet, power strip, power bar, surge protector, extension, cord, cable, wire, wiring, ballast, timer,
  adapter, heater, controller, fixture`;
const ELECTRICAL = `${PLUGGED}, pump, powerhead, skimmer, light, stand`;

const PROTECTION = `gfci, gfi, rcd, rcbo, elcb, afci, ground fault, residual current, earth leakage, ground pin, earth pin, prong,
  ground wire, earth wire, ground plug, grounding, earthing`;
const DEFEATS = `bypass, bypassing, bypassed, byass, defeat, defeating, disable, disabling, remove, removing, get rid of, get around,
  way around, skip, cut the, cut off, cutting, snip, clip, break, trick, fool, jumper, tape, wedge, glue, override, disconnect, unhook, take out, take it out,
  take off, turn off, file down, file off, without, w/o, rip out, not trip`;
const DEFEATS_BREAKER = `bypass, bypassing, byass, defeat, disable, trick, fool, jumper, tape, wedge, glue, override, holding, hold it,
  hold the, keep it from tripping`;

const STRIPS =
  'power strip, powerstrip, power bar, surge protector, extension, extension cord, extension lead, multi plug';
const ACIDS = 'acid, muriatic, hydrochloric, vinegar, ammonia, peroxide, toilet cleaner, limescale remover';
const ENGINES = `generator, genny, genset, camping stove, charcoal, bbq, barbecue, charcoal grill, propane heater, gas heater,
  petrol engine`;
const INDOORS = `indoors, indoor, inside, in the garage, in my garage, in a garage, in garage, in the basement, in my basement,
  in basement, in the house, in my house, in the living room, in living room, in the kitchen, in my kitchen, in the hallway,
  in my hallway, in the shed, in a shed, on the balcony, on my balcony, on the porch, on my porch, in the fish room, in my fish room, in the room`;
const MENDS = `splice, splicing, repair, repairing, fix, fixing, rewire, rewiring, wire, wiring, solder, soldering, tape up,
  work on, working on`;
const WET_OR_LIVE = `under water, underwater, in the water, in the tank, in the sump, while wet, power is on, power on, while live,
  live, plugged in, while its running, while it runs`;
const LIFTED = `lifted, lifted up, jack, jacked, jacked up, raised, hoist, hanging from, held up, hold it up, holds it up,
  holding it up`;
const ROCK = 'rock, zoa, paly, palythoa';
const MEDICINES = `copper, antibiotic, praziquantel, prazi, formalin, chloroquine, metronidazole, ivermectin, methylene blue,
  kanamycin, erythromycin, fenbendazole, levamisole, malachite green, iodine dip, peroxide`;
const ILLNESSES = 'ich, velvet, brooklynella, popeye, white spot, fin rot, dropsy, uronema, red bugs, flatworm';
const ANIMALS = 'fish, tang, clownfish, clown, wrasse, angelfish, goby, blenny, anemone, shrimp, seahorse';

/** Words by which a message is about the tank after all. */
const AQUARIUM = 'tank, aquarium, reef, sump, display, coral, marine, skimmer, frag';
const WATER = `${AQUARIUM}, gal, gallon, litre, liter, l, water`;
const ROOMS = `garage, greenhouse, house, bedroom, living room, workshop, shed, bathroom, attic, office, basement, conservatory,
  caravan, apartment, flat`;
const LANDLORD = 'landlord, landlady, lease, tenancy';
const EVERYBODY = `everyone, everybody, all members, every member, whole server, entire server, whole club, every channel,
  all channels`;

export const setAside: readonly SetAside[] = [
  {
    about: 'somebody in despair',
    kind: 'first',
    any: `kill myself, killing myself, want to die, wanna die, end my life, ending my life, end it all, suicide, suicidal,
      hurt myself, dont want to live, don't want to live, no reason to live`,
    says: 'Please talk to somebody now: your emergency number or a crisis line answers day and night, and the tank can wait.',
  },
  {
    about: 'somebody is hurt',
    kind: 'declined',
    any: `stung by, got stung, was stung, sting what, poked myself, pricked myself, zoa juice, cant feel my, can't feel my,
      metallic taste, palytoxin, been poisoned, was poisoned, in the eye, in my eye, in my eyes, my lips are numb,
      swallowed some tank, swallowed tank, feel dizzy, feeling dizzy, feel sick, cannot breathe, cant breathe, can't breathe,
      passed out, fainted, electrocuted`,
    together: [
      [MY_BODY, HURTS],
      [BODY, INJURED],
      ['finger, hand, foot', 'spine, bristle'],
    ],
    inOrder: [
      [SMALL, 'swallowed, drank, drunk, ate, eaten, licked'],
      ['i, we', 'swallowed, inhaled, breathed in'],
      ['cut, cutting', 'my hand, my finger, my arm, my foot', 'glass, bleeding, deep, red'],
    ],
    says: 'That is for a doctor, a vet or a poison centre, now, not for a calculator: call them and say what was touched or swallowed.',
  },
  {
    about: 'something electrical fell in the water',
    kind: 'first',
    inOrder: [
      [`${PLUGGED}, light, lamp, fan`, 'fell in, fell into, fallen in, fallen into, slipped into', 'water, sump, tank'],
      [
        'plug, socket, power strip, power bar, cord, cable, timer, adapter',
        'dropped in, dropped into',
        'water, sump, tank',
      ],
      [
        'dropped, knocked',
        `${PLUGGED}, light, lamp, fan`,
        'in the water, in the sump, in the tank, into the, in my sump, in my tank',
      ],
    ],
    says: 'Do not reach for it: with dry hands switch the power off at the breaker first, only then take it out, and do not use it again.',
  },
  {
    about: 'a burning smell or a shock',
    kind: 'first',
    any: `burning smell, burning plastic, smell of burning, smells like burning, smells of burning, smells burnt, smells burned,
      smell burning, smells electrical, electrical smell, electric shock, hot and smells, black and melted, got a shock, get a shock,
      gave me a shock, gives me a shock, got shocked, get shocked, getting shocked, being shocked, shocks me, shocked me, zaps me,
      zapped me, got zapped, a tingle, tingling, tingles, caught fire`,
    together: [
      ['smoke, smoking, spark, sparking, arcing', ELECTRICAL],
      ['smell, smelling', PLUGGED],
      [
        'feel, gives me, gave me, giving me',
        'electricity, electric, current in, voltage in, little shock, small shock',
      ],
      ['melted, melting, scorched, charred, on fire, is burning, burnt', PLUGGED],
    ],
    unless: 'bill, price, cost, expensive, sticker',
    says: 'Keep your hands out of the water and switch the power off at the breaker, not at the wet plug; then find the part that smells, sparks or tingles and do not use it again. If there is fire or smoke, get out and call the fire service. Wiring that got hot is for a licensed electrician.',
  },
  {
    about: 'a flood under way',
    kind: 'first',
    any: 'water all over the floor, water all over my floor, water everywhere, water is everywhere, is flooding, is running over, tank cracked, just burst, has burst, have burst, seam burst',
    together: [
      [
        `tank, sump, display, seam, bulkhead, overflow box, water, it is, it's, its`,
        'leaking, overflowing, pouring out, gushing, coming out of the bottom',
      ],
      [`there is, theres, there's`, 'water on the floor, water on my floor'],
    ],
    unless: `how much, how many, how high, how long, will it, will my, will the, would, does, what if, if the, if both, if my, when the, insurance,
      liable, sue, pays, clog, clogged, not leaking, stopped`,
    says: 'Stop the return pump and shut the top-off first; switch off power to everything that stands in the wet at the breaker, hands dry. If a seam leaks, draw water off into clean buckets until the level is below it. Then tell me what happened, and I work out why.',
  },
  {
    about: 'dry salt on animals',
    kind: 'first',
    inOrder: [
      ['dump, pour, throw, tip, sprinkle, chuck, toss', 'salt', 'tank, display, sump, coral, aquarium'],
      ['salt', 'straight, directly, direct', 'in, into, to the, on'],
    ],
    unless: 'how much, how many, dissolved, bucket, salinity, ppt, psu',
    says: 'Never put dry salt into a tank with animals, because it burns what it lands on: dissolve it in a bucket of water first, and add that slowly where the flow is strong.',
  },
  {
    about: 'bleach with acid',
    kind: 'declined',
    together: [
      ['bleach', ACIDS],
      ['mix, mixing, combine', 'bleach, chlorine', `${ACIDS}, cleaner`],
    ],
    unless: 'coral, bleached, anemone',
    says: 'Never bring bleach together with an acid, ammonia or another cleaner, because that gives off a poisonous gas: use one at a time with the window open, rinse well between, and if you feel ill call a poison centre.',
  },
  {
    about: 'acid or bleach by the cup',
    kind: 'declined',
    together: [
      [
        'how much, how many, what amount, amount of, cup, splash, dump, pour, dose, add, bath, soak, dip, drop',
        'acid, muriatic, hydrochloric, sulfuric, bleach, drain cleaner',
      ],
    ],
    unless: `no acid, no muriatic, not muriatic, without acid, without muriatic, acid free, instead of muriatic, instead of acid, amino,
      ascorbic, humic, coral`,
    says: 'I measure out no acid and no bleach: an alkalinity that is too high comes down with water changes, which I can work out, and for cleaning follow the label, outdoors, one at a time, with gloves and goggles.',
  },
  {
    about: 'defeating a protection',
    kind: 'declined',
    any: `cheater plug, prong adapter, ground off, earth off, lift the ground, lifting the ground, penny in the fuse, foil in the fuse, nail in the fuse,
      neutral to ground, around the gfci, around the gfi, around the rcd, around the breaker, around the ground fault, past the gfci,
      past the rcd, past the breaker, past the ground fault`,
    together: [
      [DEFEATS, PROTECTION],
      [DEFEATS_BREAKER, 'breaker'],
      ['swap, replace, change', PROTECTION, 'normal, regular, standard, ordinary, plain'],
    ],
    says: 'I won’t help defeat a ground-fault breaker, a circuit breaker or an earth, because near salt water it is what keeps a fault from killing somebody: if it trips, unplug one thing after another to find the leaking one, and let a licensed electrician look.',
  },
  {
    about: 'a bigger breaker or fuse',
    kind: 'declined',
    together: [
      ['put in, put a, swap in, fit, install, use', 'bigger, larger, stronger', 'breaker, fuse'],
      ['replace, swap, change', 'breaker, fuse', 'bigger, larger, stronger'],
      ['foil, penny, nail', 'fuse'],
      ['fuse', 'instead'],
    ],
    inOrder: [['swap, replace, upgrade', 'breaker, fuse', 'for a, with a, to a, to']],
    says: 'A breaker or fuse must fit its wire, or the wire burns before it trips: put less on the circuit, which I can work out, or let a licensed electrician lay a bigger one.',
  },
  {
    about: 'leads in a chain',
    kind: 'declined',
    any: 'two extension cords, extension cords together',
    together: [['daisy chain, daisychain, daisy chained, daisychained, daisy chaining', STRIPS]],
    inOrder: [[STRIPS, 'in, into, to, onto', `${STRIPS}, another`]],
    // Lights in a chain on one cord are worked out.
    unless: 'light, lamp, fixture',
    says: 'Don’t plug one strip or extension lead into another, because the first carries the load of all and runs hot: plug one that is long and thick enough straight into the wall, and ask me what that circuit or cord carries.',
  },
  {
    about: 'electrical work in the wet',
    kind: 'declined',
    together: [
      [MENDS, ELECTRICAL, WET_OR_LIVE],
      ['change, replace, touch, plug in', PLUGGED, 'wet hands'],
      [PLUGGED, 'got wet, is wet, soaked, splashed', 'use, using, keep, ok, okay, safe, still'],
      ['crack, cracked, nicked, frayed, chipped', 'heater, cord, cable, wire'],
      ['broken, split', 'heater', 'use, using, keep, ok, okay, safe'],
      ['unplug, turn off, switch off', 'before, when, while', 'hand, work in, working in, reach in'],
    ],
    unless: 'live rock, live sand',
    says: 'Switch it off at the breaker with dry hands before you touch it: nothing is repaired while it is wet or live, a cracked heater or cord goes in the bin, and fixed wiring is for a licensed electrician.',
  },
  {
    about: 'under a lifted load',
    kind: 'declined',
    together: [
      ['under, underneath, beneath', LIFTED],
      ['hold the tank up, holding the tank up, hold it up, hold up the tank', 'under, slide, fix'],
    ],
    inOrder: [
      [
        'stand, crawl, get, go, lie, sit, walk, slide, squeeze, reach, hand, finger',
        'under, underneath, beneath',
        'lift, lifting',
      ],
    ],
    says: 'Nobody goes under a lifted tank, not even with a hand: set it down on blocks that carry all of it first, and ask me how many people it takes to carry.',
  },
  {
    about: 'drilling tempered glass',
    kind: 'declined',
    // With numbers it is the question of where holes may sit, which refuses tempered glass itself.
    wordsOnly: true,
    together: [['drill, drilling, drilled, hole saw', 'tempered, toughened']],
    unless: `not tempered, isn't tempered, isnt tempered, untempered`,
    says: 'Tempered glass bursts when it is drilled: drill only a pane that its maker says is not tempered, or hang the overflow over the rim.',
  },
  {
    about: 'an engine indoors',
    kind: 'declined',
    any: 'indoor generator, indoors generator',
    inOrder: [
      [ENGINES, INDOORS],
      ['inside use, indoor use, indoors', ENGINES],
    ],
    unless: 'outside, outdoors, wave, ozone, tank in the, tank in my, tank is in',
    says: 'Never run a generator, a stove or a grill indoors or in a garage, because its fumes kill without a smell: put it outside, far from windows, or ask me how long a battery lasts.',
  },
  {
    about: 'boiling rock',
    kind: 'declined',
    any: 'boiling rock, boiling the rock, boiling live rock, boiling my rock, boiling dry rock',
    together: [['boil, boiled, boiling water, microwave, bake, in the oven', ROCK]],
    says: 'Never boil, bake or microwave rock or zoanthids, because the steam can carry a deadly poison: let the rock dry for weeks outdoors instead, and handle it with gloves and goggles.',
  },
  {
    about: 'medicine for animals',
    kind: 'declined',
    any: 'antibiotic, medicine, medication, meds',
    together: [
      [
        'dose, dosage, dosing, how much, how many, treat, treatment, drops, mg, dip, level, what, which, cure',
        MEDICINES,
      ],
      [ILLNESSES, 'treat, treatment, cure, what do i do, help, how much, how do i, dose, dip, has, have, garlic'],
      [ANIMALS, `sick, dying, not eating, wont eat, won't eat, spots, breathing fast`],
    ],
    unless: 'pipe, tube, tubing, coil, bore, copper wire',
    says: 'Medicine for animals is a vet’s matter, because I do arithmetic, no diagnosis and no drug doses; I can tell you how much water the tank holds, which the vet will ask.',
  },
  {
    about: 'a question of law',
    kind: 'declined',
    any: `can i sue, sue the, sue my, sue him, sue her, sue them, to sue, be sued, get sued, lawsuit, lawyer, solicitor, attorney, liable, liability,
      legal, illegal, who pays, evict, evicted, insurance claim, small claims, in court`,
    together: [
      ['insurance', 'cover, pay, paid'],
      [LANDLORD, 'evict, deposit, forbid, no tanks, permission, ban, sue, kick me out'],
      ['deposit', 'keep my, get back'],
      ['permit, license, licence', 'import, coral, collect'],
    ],
    says: 'That is a question for a lawyer, your insurer or the authority; what I can give you for it are numbers, such as how heavy the tank is when it is filled.',
  },
  {
    about: 'a pool or a hot tub',
    kind: 'declined',
    any: 'hot tub, hottub, jacuzzi, pool, my spa, spa pump, spa heater, sauna',
    unless: `${AQUARIUM}, kiddie pool, pool of, sand, evaporation`,
    says: 'Pools and hot tubs have rules and wiring of their own, which are for a licensed pool or electrical firm; I only work out aquarium builds.',
  },
  {
    about: 'heat for a room',
    kind: 'declined',
    any: 'garage heater, space heater, room heater',
    inOrder: [
      ['heater, heating, btu, kw, radiator, air conditioner, ac, heat pump', 'for', ROOMS],
      ['heat, heating', 'my, the, a', ROOMS],
      ['btu, air conditioner, radiator', 'room'],
    ],
    unless: WATER,
    says: 'I size heat for a tank, not for a room, which is for a heating firm; tell me the coldest the room gets and how much water there is, and I size the tank’s heater.',
  },
  {
    about: 'another kind of tank',
    kind: 'declined',
    any: `goldfish, betta, planted tank, planted aquarium, freshwater tank, freshwater aquarium, fresh water tank, freshwater planted,
      pond, koi, turtle, tortoise, terrarium, vivarium, paludarium, bearded dragon, gecko, axolotl, cichlid, discus tank, discus fish,
      guppy, guppies, tetras, hydroponics, aquaponics, home brew, homebrew, kombucha, septic tank, propane tank, fuel tank, gas tank,
      hot water tank, rain barrel, water tank on, my snake, hamster`,
    unless: `reef, saltwater, salt water, marine, coral, sump, skimmer, return, top off, topoff, ato, reservoir, evaporates`,
    says: 'I only know salt water reef tanks, so for fresh water, ponds, reptiles and other vessels ask somebody who keeps them; the volume of a plain box I can still work out, “how much water in 60x30x36 cm”.',
  },
  {
    about: 'steering the bot',
    kind: 'declined',
    any: `ignore the rules, ignore all rules, ignore all instructions, ignore previous, ignore all previous, ignore the above,
      ignore everything, disregard previous, disregard the above, disregard all, forget previous, forget everything you,
      forget everything above, forget all your,
      you are now dan, you are now a, you are now an, you are a pirate, rules dont exist, admin override, wipe database,
      wipe the database, pretend you, pretend that you, pretend to be, pretend youre, pretend you're,
      roleplay, role play, role playing, system prompt, system message, hidden prompt, text above, developer mode, dev mode,
      god mode, debug mode, jailbreak, as admin, as an admin, i am the admin, i am admin, im the admin, i'm the admin, your developer,
      your creator, obey me, sudo, new instructions, new rule, no rules now, no restrictions, all restrictions, without cautions,
      show any warnings, no warnings, tank is safe no matter, always say yes, from now on say, from now on you,
      from now on always, from now on never, from now on answer without, bot token, your token, api key, your env, your source code,
      other members ask, another member, someone elses, everyones tanks, delete the database, drop the database, simulate a`,
    together: [
      [
        'act as, act like',
        'terminal, doctor, lawyer, electrician, assistant, human, model, pirate, unrestricted, no rules',
      ],
      [
        'ignore, disregard, forget, drop, override, bypass, print, show, reveal, what are, tell me, repeat, change',
        `your rules, your instructions, your prompt, your programming, your restrictions, your guidelines, your safety,
          your warnings`,
      ],
    ],
    inOrder: [['delete, wipe, erase, drop, change', 'everyones, every members, all members']],
    says: 'I only work out reef tank numbers from what each member tells me about their own, and nothing in a message changes how I do it or shows what is another’s.',
  },
  {
    about: 'calling everybody',
    kind: 'declined',
    any: 'ping all, tag all',
    inOrder: [
      [
        'ping, tag, notify, alert, mention, say, write, post, dm, message, tell, announce to, call, shout, spam',
        EVERYBODY,
      ],
    ],
    // "What do they all say": what everybody says is not asked of us.
    unless: 'everyone says, everybody says, all say, tell me',
    says: 'I answer whoever asks me and call nobody else: write it to your club yourself.',
  },
  {
    about: 'off the subject',
    kind: 'declined',
    any: `whats the weather, what's the weather, what is the weather, weather tomorrow, weather forecast, weather today, rain today,
      will it rain, gonna rain, going to rain, joke, something funny, poem, a rap, haiku, limerick, sing, play some music, a song,
      tell me a story, write a story, python, javascript, html, write code, excel formula, vote for, election, president, politics,
      boil an egg, cook rice, football score, football game, soccer game, basketball game, baseball game, won the game,
      won the match, bitcoin, crypto, what stocks, stock market, homework, essay, translate this, capital of, a movie, on tv,
      girlfriend left me, boyfriend left me, meaning of life, horoscope, book me, time is it, pizza, draw a picture, draw me, lottery,
      eat tonight, what car, which car`,
    together: [
      ['recipe', 'lasagna, cake, bread, soup, chicken, pasta, curry, cookie, dinner'],
      ['write', 'program, script, code'],
      ['translate', 'german, french, spanish, italian, dutch, english'],
      ['like, watch', 'football, soccer, baseball, basketball'],
    ],
    unless: 'no joke',
    wordsOnly: true,
    says: 'That is beyond me, because I only work out the numbers of a reef tank build, such as “is 300 W enough for 90 gal at 78F in a 66F room”.',
  },
  {
    about: 'a ground-fault breaker',
    kind: 'advice',
    wordsOnly: true,
    any: 'gfci, gfi, rcd, rcbo, ground fault, residual current, earth leakage, stray voltage',
    says: 'A ground-fault breaker (GFCI, or an RCD of 30 mA) belongs before everything that plugs in near salt water, and stays in: if it trips, unplug one thing after another to find the leaking one, and leave the wiring to a licensed electrician.',
  },
  {
    about: 'a float switch out of action',
    kind: 'advice',
    wordsOnly: true,
    together: [[DEFEATS, 'float switch, float valve, level sensor, optical sensor']],
    says: 'It is what stands between the reservoir and your floor, so leave it in and add a second one above it; ask me “what if my top-off sticks open” to see what it would do.',
  },
];
