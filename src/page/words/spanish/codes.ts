// The words of the engine's codes, where no answer says them.
export const codes = {
    units: {
        each: 'c/u',
        sq_ft: 'pies cuadrados',
        linear_ft: 'pies lineales',
    },
    /// Each follows "para" or stands in a list.
    uses: {
        price: 'el precio',
        options: 'las opciones',
        closing_costs: 'los costos de cierre',
        points: 'los puntos',
        temporary_buydown: 'la reducción temporal de la tasa',
    },
    paid_in_cash: {
        none: '',
        upfront_fee: 'cargo inicial',
        single_premium: 'prima única',
    },
    grades: {
        level: 'lote a nivel',
        garden: 'lote con sótano a nivel de jardín (daylight)',
        walk_out: 'lote con salida al patio (walk-out)',
    },
    standings: {
        included: 'viene con su vivienda',
        free_choice: 'una elección sin costo',
        yours: 'en su vivienda',
        yours_partly: 'en parte en su vivienda',
        extra: 'adicional',
        unavailable: 'no disponible aquí',
        decor: 'decoración, no está a la venta',
    },
    programs: {
        conventional: 'Convencional',
        fha: 'FHA',
        va: 'VA',
        usda: 'USDA',
    },
    entitlements: {
        first: 'primer uso',
        subsequent: 'uso posterior',
        exempt: 'exento del cargo',
    },
    grounds: {
        published: 'publicado',
        from_memory: 'de memoria',
        common_practice: 'práctica común',
        sample: 'cifras de muestra',
    },
    month_parts: {
        principal_and_interest: 'Capital e intereses',
        mortgage_insurance: 'Seguro hipotecario',
        property_tax: 'Impuestos sobre la propiedad',
        homeowners_insurance: 'Seguro de vivienda',
        flood_insurance: 'Seguro contra inundaciones',
        wind_insurance: 'Seguro contra viento',
        association_dues: 'Cuotas de la asociación (HOA)',
        district_charges: 'Cargos del distrito',
    },
};
