# An address that is not this machine's, or a port that another program uses.
$ quoin serve --listen 203.0.113.7 --port 8571
2> quoin: found 203.0.113.7 port 8571: Cannot assign requested address
2>   expected an address of this computer and a free port
2>   --port 0 takes any free port, --port N another one
2>   [cannot-listen]
= 1
