// The first lines of every text, in Spanish.
#pragma once

#include "words/heading.hpp"

namespace quoin::spanish {

inline constexpr HeadingWords heading = {
    .community = "{}, de {}",
    .home = "Plano {} ({}, {} pies cuadrados), fachada {}, lote {}, para {}",
    .dates = "Al {:es}; lista de precios {}, vigente hasta el {:es}; cierre el {:es}",
    .prepared_by = "Preparado por {}",
};

} // namespace quoin::spanish
