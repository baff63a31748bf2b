import { type Component, everyComponent, type Problem } from './api.js';
import { lengthOf, required, tooLong, tooMany } from './check-message.js';

const TYPE = {
  row: 1,
  button: 2,
  select: 3,
  textInput: 4,
  section: 9,
  text: 10,
  file: 13,
  container: 17,
  label: 18,
} as const;
const LINK = 5;
const MODERN = new Set([9, 10, 11, 12, 13, 14, 17]);

const problem = (path: string, code: string, message: string): Problem => ({ path, code, message });

export function checkComponents(components: readonly Component[], modern: boolean): Problem[] {
  const all = [...everyComponent(components)];
  const problems = all.flatMap(([path, component]) => checkOne(path, component));
  const ids = all.map(([, { custom_id }]) => custom_id).filter((id) => id !== undefined);
  if (new Set(ids).size < ids.length)
    problems.push(problem('components', 'COMPONENT_CUSTOM_ID_DUPLICATED', 'Component custom id cannot be duplicated'));
  if (modern) {
    if (all.length > 40)
      problems.push(problem('components', 'COMPONENT_MAX_TOTAL_COMPONENTS_EXCEEDED', 'Must be 40 or fewer.'));
    const text = all.reduce((sum, [, { content }]) => sum + lengthOf(content ?? ''), 0);
    if (text > 4000)
      problems.push(
        problem('components', 'COMPONENT_DISPLAYABLE_TEXT_SIZE_EXCEEDED', 'Must be 4000 or fewer in length.'),
      );
    return problems;
  }
  problems.push(...tooMany('components', components, 5));
  for (const [path, { type }] of all) {
    if (MODERN.has(type))
      problems.push(problem(path, 'UNION_TYPE_CHOICES', `Type ${type} needs MessageFlags.IS_COMPONENTS_V2`));
  }
  for (const [i, { type }] of components.entries()) {
    if (type !== TYPE.row)
      problems.push(problem(`components.${i}`, 'UNION_TYPE_CHOICES', 'Value of field "type" must be one of (1,).'));
  }
  return problems;
}

function checkOne(path: string, component: Component): Problem[] {
  switch (component.type) {
    case TYPE.row:
      return checkRow(path, component.components ?? []);
    case TYPE.button:
      return checkButton(path, component);
    case TYPE.select:
      return [
        ...customId(path, component),
        ...tooLong(`${path}.placeholder`, component.placeholder, 150),
        ...tooMany(`${path}.options`, component.options ?? [], 25),
        ...(component.options ?? []).flatMap(({ label, value, description }, i) => [
          ...required(`${path}.options.${i}.label`, label),
          ...tooLong(`${path}.options.${i}.label`, label, 100),
          ...tooLong(`${path}.options.${i}.value`, value, 100),
          ...tooLong(`${path}.options.${i}.description`, description, 100),
        ]),
      ];
    case TYPE.section: {
      const texts = component.components ?? [];
      return [
        ...(texts.length < 1 || texts.length > 3
          ? [problem(path, 'BASE_TYPE_BAD_LENGTH', 'Must be between 1 and 3 in length.')]
          : []),
        ...(component.accessory ? [] : [problem(`${path}.accessory`, 'BASE_TYPE_REQUIRED', 'This field is required')]),
      ];
    }
    case TYPE.text:
      return required(`${path}.content`, component.content);
    case TYPE.container:
      return component.components?.length ? [] : [problem(path, 'BASE_TYPE_REQUIRED', 'This field is required')];
    default:
      return [];
  }
}

function checkRow(path: string, inside: readonly Component[]): Problem[] {
  const selects = inside.filter(({ type }) => type !== TYPE.button && type !== TYPE.textInput);
  return [
    ...tooMany(`${path}.components`, inside, 5),
    ...(inside.length === 0 ? [problem(path, 'BASE_TYPE_BAD_LENGTH', 'Must be between 1 and 5 in length.')] : []),
    ...(selects.length > 0 && inside.length > 1
      ? [problem(path, 'COMPONENT_LAYOUT_WIDTH_EXCEEDED', 'A select stands alone.')]
      : []),
  ];
}

function checkButton(path: string, button: Component): Problem[] {
  const named = button.style === LINK ? tooLong(`${path}.url`, button.url, 512) : customId(path, button);
  return [...named, ...required(`${path}.label`, button.label), ...tooLong(`${path}.label`, button.label, 80)];
}

const customId = (path: string, { custom_id }: Component): Problem[] => [
  ...required(`${path}.custom_id`, custom_id),
  ...tooLong(`${path}.custom_id`, custom_id, 100),
];

export interface Modal {
  readonly custom_id: string;
  readonly title: string;
  readonly components: readonly Component[];
}

export function checkModal({ custom_id, title, components }: Modal): Problem[] {
  const all = [...everyComponent(components)];
  return [
    ...customId('modal', { type: 0, custom_id }),
    ...required('title', title),
    ...tooLong('title', title, 45),
    ...tooMany('components', components, 5),
    ...(components.length === 0
      ? [problem('components', 'BASE_TYPE_BAD_LENGTH', 'Must be between 1 and 5 in length.')]
      : []),
    ...all.flatMap(([path, component]) => checkModalPart(path, component)),
  ];
}

function checkModalPart(path: string, component: Component): Problem[] {
  if (component.type === TYPE.label)
    return [
      ...required(`${path}.label`, component.label),
      ...tooLong(`${path}.label`, component.label, 45),
      ...tooLong(`${path}.description`, component.description, 100),
      ...(component.component ? [] : [problem(`${path}.component`, 'BASE_TYPE_REQUIRED', 'This field is required')]),
    ];
  if (component.type === TYPE.textInput)
    return [
      ...customId(path, component),
      ...tooLong(`${path}.label`, component.label, 45),
      ...tooLong(`${path}.placeholder`, component.placeholder, 100),
      ...tooLong(`${path}.value`, component.value, 4000),
    ];
  return [];
}
