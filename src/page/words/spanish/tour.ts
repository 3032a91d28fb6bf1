// The tour: an area of the home at a time.
import {rich} from '../phrase';
import type {Marks, Parts, Texts} from '../phrase';

export const tour = {
    areas: 'Áreas de la vivienda',
    something_chosen: 'usted eligió algo aquí',
    home_line: ({
        plan,
        elevation,
        lot,
        stage,
    }: Parts<'plan' | 'elevation' | 'lot'> & {stage: string | null}) =>
        rich`${plan}, fachada ${elevation}, lote ${lot}${stage && `. Avance de la obra: ${stage}`}`,
    next: ({area}: Texts<'area'>) => `Siguiente: ${area}`,

    comes_with: ({plan}: Parts<'plan'>) => rich`Incluido en el plano ${plan}`,
    packages: 'Paquetes',
    packages_say: 'Varias cosas por un solo precio.',
    upgrades: 'Mejoras',
    upgrades_say: 'Toque una mejora para agregarla o quitarla. Las cifras muestran lo que cambia.',
    choices: 'Elecciones sin costo',
    choices_say: 'Elija la que prefiera.',
    allowances: 'Asignaciones',
    allowances_say: 'El precio ya incluye un presupuesto para esto.',

    requests: 'Pedidos fuera de la lista de precios',
    request: ({estimate}: {estimate: string | null}) =>
        `por confirmar, no está en el precio${estimate ? `; se estima en ${estimate}` : ''}`,
    barred: 'No disponible aquí',
    model: ({model}: Texts<'model'>) => `Lo que ve en la casa modelo ${model}`,
    model_extra: ({standing, price}: Texts<'standing' | 'price'>) => `${standing}, ${price}`,
    model_partly: ({level}: Texts<'level'>) => `en su vivienda: ${level}`,

    welcome: ({strong}: Marks<'strong'>) =>
        rich`${strong('Este es un ejemplo que ya tiene datos.')} Recorra los cuartos y toque cualquier línea. El precio, el pago mensual y el efectivo al pie de la página cambian al instante. Con Deshacer se anula cada toque.`,
    understood: 'Entendido',

    empty: 'Aún no hay nada que recorrer',
    empty_says:
        'La lista de precios no tiene elementos incluidos ni opciones. La vivienda es su plano, ' +
        'su fachada y su lote. Usted los elige en Lotes.',
};
