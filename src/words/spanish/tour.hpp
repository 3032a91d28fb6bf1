// The home, area by area, in Spanish.
#pragma once

#include "words/tour.hpp"

namespace quoin::spanish {

inline constexpr TourWords tour = {
    .title = "La vivienda, área por área",
    .contract_price = "Precio del contrato {}",
    .scenario = "{}: {} al mes, {}. {}",
    .how_to_read = "Las líneas marcadas con + vienen con su plano. Las dos últimas columnas "
                   "muestran lo que cambia si agrega una opción o quita una que eligió.",
    .price = "precio",
    .a_month = "al mes",
    .cash = "efectivo necesario",
    .state = {{{TourState::included, "incluida"},
               {TourState::chosen, "elegida"},
               {TourState::held, "en un paquete"},
               {TourState::offered, "disponible"},
               {TourState::barred, "no disponible"}}},
    .agreed = "acordada",
    .in_package = "en {}",
    .included = "asignación incluida de {}",
    .to_spend = "usted piensa gastar {}",
    .brings = "viene con {}",
    .before = "decidir antes de: {}",
    .request = "solicitud especial, no está en el precio: {}",
    .incentives = "Incentivos del constructor",
    .incentive = "{}, {}: {}",
    .towards = "{} para {}",
    .used = "usado: {}",
    .not_used = "sin usar; puede servir para {}",
    .touch_is_difference = "El cambio que se muestra es una cotización completa menos otra, y cada "
                           "cotización se redondea antes.",
};

} // namespace quoin::spanish
