# Writes the head of a PNG picture of 10,000 by 10,000 pixels beside the price book that names it.
import os
import shutil

HERE = os.path.dirname(os.path.abspath(__file__))
SIDE = (10_000).to_bytes(4, "big")

shutil.copy(os.path.join(HERE, "book.json"), "book.json")
with open("deck.png", "wb") as file:
    file.write(b"\x89PNG\r\n\x1a\n\0\0\0\x0dIHDR" + SIDE + SIDE + b"\x08\x02\0\0\0")
