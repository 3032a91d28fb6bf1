# Writes a price book of 50 MB, far over what is read.
with open("large.json", "w", encoding="utf-8") as file:
    file.write('{"format": "quoin/pricebook/1", "comment": "' + "x" * (50 << 20) + '"}')
