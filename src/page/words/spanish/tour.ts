// The tour: an area of the home at a time.
import {rich} from '../phrase';
import type {Marks, Parts, Texts} from '../phrase';

export const tour = {
    areas: 'Áreas de la vivienda',
    areas_short: 'Áreas',
    chosen_here: ({price}: Texts<'price'>) => `usted eligió algo aquí: ${price}`,

    all_chosen: 'Lo que eligió',
    options_come_to: ({price}: Texts<'price'>) => `Opciones: ${price}`,
    take_all_out: 'Quitar todo',
    all_taken_out: 'Todas las opciones: quitadas',
    still_open: 'Por decidir',
    decide_before: ({stage}: Texts<'stage'>) => `Antes de esta etapa: ${stage.toLowerCase()}`,
    decide_any_time: 'En cualquier momento',

    floor_plan: 'Distribución',
    floors: 'Pisos',
    plan_says: 'Toque un ambiente para ver lo que puede elegir allí.',
    rooms_listed: 'Ambientes y medidas',
    drawing: 'Dibujando la vivienda…',

    find: 'Buscar una opción',
    find_example: 'terraza, cuarzo, tomacorriente…',
    found: ({count}: {count: number}) =>
        count === 0
            ? 'Nada con estas palabras. Pruebe con una sola, o con una más corta.'
            : count === 1
              ? '1 opción'
              : `${count} opciones`,

    home_line: ({
        plan,
        elevation,
        lot,
        stage,
    }: Parts<'plan' | 'elevation' | 'lot'> & {stage: string | null}) =>
        rich`${plan}, fachada ${elevation}, lote ${lot}${stage && `. Avance de la obra: ${stage}`}`,
    price_column: 'precio',
    month_column: 'al mes',
    next: ({area}: Texts<'area'>) => `Siguiente: ${area}`,

    extra_count: ({count}: {count: number}) => `${count} con costo adicional`,
    comes_with: ({plan}: Parts<'plan'>) => rich`Incluido en el plano ${plan}`,
    packages: 'Paquetes',
    upgrades: 'Mejoras',
    choices: 'Elecciones',
    allowances: 'Asignaciones',

    requests: 'Pedidos fuera de la lista de precios',
    request: ({estimate}: {estimate: string | null}) =>
        `por confirmar, no está en el precio${estimate ? `; se estima en ${estimate}` : ''}`,
    barred: 'No disponible aquí',
    model: ({model}: Texts<'model'>) => `Lo que ve en la casa modelo ${model}`,
    model_extra: ({standing, price}: Texts<'standing' | 'price'>) => `${standing}, ${price}`,
    model_partly: ({level}: Texts<'level'>) => `en su vivienda: ${level}`,

    welcome: ({strong}: Marks<'strong'>) =>
        rich`${strong('Un ejemplo que ya tiene datos:')} toque cualquier línea.`,
    understood: 'Entendido',

    empty: 'Aún no hay nada que recorrer',
    empty_says:
        'La lista de precios no tiene elementos incluidos ni opciones. La vivienda es su plano, ' +
        'su fachada y su lote. Usted los elige en Lotes.',
};
