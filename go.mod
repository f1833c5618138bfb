module backspan

go 1.26

require (
	github.com/BurntSushi/toml v1.6.0
	pgregory.net/rapid v1.3.0
)
