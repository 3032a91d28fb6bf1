// Compressing by zlib.
#include "gzip.hpp"

#include <zlib.h>

#include <quoin/exact/broken.hpp>

#include "../wire/media_types.hpp"

namespace quoin::apps {
namespace {

/// Shorter ones fit in a packet or two as they are.
constexpr std::size_t least = 2000;
constexpr int level = 6;             ///< 2 ms for a tour; the fastest one leaves it a third larger
constexpr int gzip_window = 15 + 16; ///< zlib's largest window, in the gzip format

/// What is not compressed by itself: of pictures, those that are written.
bool is_text(std::string_view type) {
    return type.starts_with("text/") || type == json_type ||
           type == media_type_of(PictureKind::svg);
}

} // namespace

std::string gzipped(std::string_view text) {
    z_stream stream{};
    ensure(deflateInit2(&stream, level, Z_DEFLATED, gzip_window, 8, Z_DEFAULT_STRATEGY) == Z_OK,
           "zlib has room to begin");
    std::string packed(deflateBound(&stream, text.size()), '\0');
    stream.next_in = reinterpret_cast<Bytef*>(const_cast<char*>(text.data())); // it only reads
    stream.avail_in = static_cast<uInt>(text.size());
    stream.next_out = reinterpret_cast<Bytef*>(packed.data());
    stream.avail_out = static_cast<uInt>(packed.size());
    const int ended = deflate(&stream, Z_FINISH);
    packed.resize(stream.total_out);
    deflateEnd(&stream);
    ensure(ended == Z_STREAM_END, "a text fits into its bound");
    return packed;
}

void compress(HttpResponse& response, const HttpRequest& request) {
    if (response.body.size() < least || !is_text(response.type)) return;
    if (response.headers.contains("Vary")) return; // an asset has chosen
    response.headers.emplace("Vary", "Accept-Encoding");
    if (!request.takes_gzip) return;
    response.headers.emplace("Content-Encoding", "gzip");
    response.body = gzipped(response.body);
}

} // namespace quoin::apps
